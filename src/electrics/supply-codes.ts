/** Supply ranges of road vehicles by code, volts. Source: ISO 16750-2, tables 1 and 2 (figures from memory and a quotation of the 2010 edition). */
export const supplyCodes = [
  { code: 'A', systemVolts: 12, voltsMin: 6, voltsMax: 16 },
  { code: 'B', systemVolts: 12, voltsMin: 8, voltsMax: 16 },
  { code: 'C', systemVolts: 12, voltsMin: 9, voltsMax: 16 },
  { code: 'D', systemVolts: 12, voltsMin: 10.5, voltsMax: 16 },
  { code: 'E', systemVolts: 24, voltsMin: 10, voltsMax: 32 },
  { code: 'F', systemVolts: 24, voltsMin: 16, voltsMax: 32 },
  { code: 'G', systemVolts: 24, voltsMin: 22, voltsMax: 32 },
  { code: 'H', systemVolts: 24, voltsMin: 18, voltsMax: 32 },
] as const;

/**
 * The codes of ISO 16750-2 whose whole range a device's window covers, of one system.
 * @param voltsMin lowest supply of the device, volts
 * @param voltsMax highest supply of the device, volts
 * @param systemVolts 12 or 24
 */
export function coveredSupplyCodes(voltsMin: number, voltsMax: number, systemVolts: 12 | 24): readonly string[] {
  return supplyCodes
    .filter((each) => each.systemVolts === systemVolts && voltsMin <= each.voltsMin && voltsMax >= each.voltsMax)
    .map((each) => each.code);
}
