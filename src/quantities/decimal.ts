import { divideRounded } from './divide-rounded.ts';

/** Millionths: every decimal text of a record is exact in this scale. */
export const decimalScale = 1_000_000n;

/**
 * A decimal text as whole millionths ("8.875" to 8875000).
 * @param text a plain decimal, at most six decimals
 */
export function millionths(text: string): bigint {
  const negative = text.startsWith('-');
  const [whole = '0', rest = ''] = text.replace('-', '').split('.');
  const value = BigInt(whole) * decimalScale + BigInt(rest.padEnd(6, '0').slice(0, 6));
  return negative ? -value : value;
}

/**
 * Whole millionths as the shortest decimal text (8875000 to "8.875").
 * @param value millionths
 */
export function decimalText(value: bigint): string {
  const magnitude = value < 0n ? -value : value;
  const rest = String(magnitude % decimalScale)
    .padStart(6, '0')
    .replace(/0+$/, '');
  return `${value < 0n ? '-' : ''}${magnitude / decimalScale}${rest === '' ? '' : `.${rest}`}`;
}

/**
 * Quantity times price over base quantity, in whole minor units, half away from zero (EN 16931-1, BT-131).
 * @param quantity decimal text
 * @param unitPriceMinorUnits decimal text, minor units
 * @param baseQuantity decimal text, not zero
 */
export function lineAmountMinorUnits(quantity: string, unitPriceMinorUnits: string, baseQuantity = '1'): number {
  return Number(
    divideRounded(millionths(quantity) * millionths(unitPriceMinorUnits), millionths(baseQuantity) * decimalScale),
  );
}

/**
 * A share in percent of an amount, in whole minor units, half away from zero (EN 16931-1, BR-CO-17).
 * @param amountMinorUnits whole minor units
 * @param percent decimal text
 */
export function percentOfMinorUnits(amountMinorUnits: number, percent: string): number {
  return Number(divideRounded(BigInt(amountMinorUnits) * millionths(percent), 100n * decimalScale));
}
