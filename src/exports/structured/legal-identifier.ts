import { fitsScheme } from './fits-scheme.ts';

// Registers that a country's own Peppol rules name (DK-R-014, IS-R-002, NL-R-003, SE-R-004), and those of Belgium and Norway, by their code in the list of ISO 6523.
const registers: Readonly<Record<string, readonly string[]>> = {
  BE: ['0208'],
  DK: ['0184'],
  IS: ['0196'],
  NL: ['0106', '0190'],
  NO: ['0192'],
  SE: ['0007'],
};

/**
 * A register number (BT-30, BT-47) with its scheme where the country's register has one and the number fits it.
 * @param identifier as the book has it
 * @param country two letters
 */
export function legalIdentifier(identifier: string, country: string): { identifier: string; scheme?: string } {
  const compact = identifier.replace(/[\s.-]/g, '').toUpperCase();
  const scheme = registers[country]?.find((each) => fitsScheme(each, compact));
  return scheme === undefined ? { identifier } : { identifier: compact, scheme };
}
