import { currencyDigits } from '../quantities/currency-digits.ts';

/** A whole number or nothing. */
export const wholeOrNothing = (text: string): string | null =>
  /^\d{0,9}$/.test(text) ? null : 'Type a whole number, or nothing.';

/** A whole number. */
export const whole = (text: string): string | null => (/^\d{1,9}$/.test(text) ? null : 'Type a whole number.');

/** A number with or without decimals, or nothing; a decimal comma is understood. */
export const numberOrNothing = (text: string): string | null =>
  /^(\d{1,9}([.,]\d{1,6})?)?$/.test(text) ? null : 'Type a number such as 12.6, or nothing.';

/** The number typed, with a decimal point or comma. */
export const numberOf = (text: string): number => Number(text.replace(',', '.'));

/** A clock time or nothing. */
export const clockOrNothing = (text: string): string | null =>
  /^(([01]?\d|2[0-3]):[0-5]\d)?$/.test(text) ? null : 'Type a time such as 08:30, or nothing.';

/** A clock time with two digits for the hour. */
export const clockOf = (text: string): string => text.padStart(5, '0');

/** Something, not nothing. */
export const something = (text: string): string | null => (text.trim() === '' ? 'Type something.' : null);

/** A list typed with commas; "none" is an empty list. */
export function listOf(text: string): string[] {
  return text
    .split(',')
    .map((each) => each.trim())
    .filter((each) => each !== '' && each !== 'none');
}

const lengthForm = /^(\d+(?:[.,]\d+)?)\s*(mm|cm|m|in|"|ft)?$/i;
const millimetresPer: Readonly<Record<string, number>> = { mm: 1, cm: 10, m: 1000, in: 25.4, '"': 25.4, ft: 304.8 };

/**
 * A length as typed, in whole millimetres; null when it is none.
 * @param text "28", "28 mm", "1.1 in"
 * @param unit the unit of a bare number
 */
export function lengthOf(text: string, unit: 'in' | 'mm'): number | null {
  const match = lengthForm.exec(text.trim());
  if (match === null) return null;
  const size = millimetresPer[(match[2] ?? unit).toLowerCase()] ?? 1;
  return Math.round(numberOf(match[1] ?? '') * size);
}

/** A length, or nothing. */
export const lengthOrNothing =
  (unit: 'in' | 'mm') =>
  (text: string): string | null =>
    text === '' || lengthOf(text, unit) !== null ? null : `Type a length in ${unit}, or with its unit: 28 mm, 1.1 in.`;

/** A conductor's size as typed: "18" or "AWG 18", "0.75 mm2"; null when it is none. */
export function gaugeOf(text: string): { awg: number } | { squareMillimetres: number } | null {
  const metric = /^(\d+(?:[.,]\d+)?)\s*mm(?:2|²)$/i.exec(text.trim());
  if (metric !== null) return { squareMillimetres: numberOf(metric[1] ?? '') };
  const american = /^(?:awg\s*)?(\d{1,2})(?:\s*awg)?$/i.exec(text.trim());
  return american === null || Number(american[1]) > 30 ? null : { awg: Number(american[1]) };
}

/** A conductor's size, or nothing. */
export const gaugeOrNothing = (text: string): string | null =>
  text === '' || gaugeOf(text) !== null ? null : 'Type a gauge number such as 18, or a section such as 0.75 mm2.';

/** Two parts typed with a slash; the second may be absent. */
export function pairOf(text: string): readonly [string, string] {
  const [first = '', ...rest] = text.split('/');
  return [first.trim(), rest.join('/').trim()];
}

/** Degrees Celsius as typed, "55", "55 C" or "131 F"; null when it is none. */
export function celsiusOf(text: string): number | null {
  const match = /^([-−]?\d{1,3})\s*°?\s*([cf])?$/i.exec(text.trim());
  if (match === null) return null;
  const degrees = Number((match[1] ?? '').replace('−', '-'));
  return (match[2] ?? 'c').toLowerCase() === 'f' ? Math.round(((degrees - 32) * 5) / 9) : degrees;
}

/**
 * An amount of money as typed, in the currency's minor unit; null when it is none or has too many decimals.
 * @param text "145", "145.50", "145,50"
 * @param currency three-letter code; its decimals by ISO 4217
 */
export function amountOf(text: string, currency: string): number | null {
  const match = /^(\d{1,9})(?:[.,](\d+))?$/.exec(text.trim());
  const digits = currencyDigits(currency);
  if (match === null || (match[2] ?? '').length > digits) return null;
  return Number(`${match[1]}${(match[2] ?? '').padEnd(digits, '0')}`);
}

/** An amount of money, or nothing. */
export const amountOrNothing =
  (currency: string) =>
  (text: string): string | null =>
    text === '' || amountOf(text, currency) !== null
      ? null
      : `Type an amount in ${currency} with at most ${currencyDigits(currency)} decimals, such as 145, or nothing.`;
