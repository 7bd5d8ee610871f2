import { decimalScale, decimalText, millionths } from './decimal.ts';

/**
 * Whole minor units as plain decimal text in the major unit, with all its decimals (12000 cents to "120.00", 980 yen to "980").
 * @param minorUnits whole minor units
 * @param digits decimals of the currency
 */
export function majorText(minorUnits: number, digits: number): string {
  const text = String(Math.abs(minorUnits)).padStart(digits + 1, '0');
  const sign = minorUnits < 0 ? '-' : '';
  return digits === 0 ? `${sign}${text}` : `${sign}${text.slice(0, -digits)}.${text.slice(-digits)}`;
}

/**
 * A price in decimals of the minor unit as plain decimal text in the major unit, exact ("72.5" cents to "0.725").
 * @param minorUnits decimal text, minor units
 * @param digits decimals of the currency
 */
export function majorPriceText(minorUnits: string, digits: number): string {
  const scaled = millionths(minorUnits);
  const scale = 10n ** BigInt(digits);
  const whole = scaled / (decimalScale * scale);
  const rest = scaled % (decimalScale * scale);
  const magnitude = rest < 0n ? -rest : rest;
  const decimals = String(magnitude)
    .padStart(6 + digits, '0')
    .replace(/0+$/, '');
  const sign = scaled < 0n ? '-' : '';
  const units = whole < 0n ? -whole : whole;
  return decimals === '' ? `${sign}${units}` : `${sign}${units}.${decimals}`;
}

/**
 * A decimal text in its shortest form ("20.00" to "20").
 * @param text a plain decimal
 */
export function plainDecimal(text: string): string {
  return decimalText(millionths(text));
}
