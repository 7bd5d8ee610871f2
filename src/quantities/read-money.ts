import { currencyDigits } from './currency-digits.ts';

/**
 * An amount as a person types it ("1234.5", "1234,50") in whole minor units, or null when it is none.
 * Separators of thousands are refused: "1,234" would be read differently by different people.
 * @param text what was typed
 * @param currency three-letter code
 */
export function readMoney(text: string, currency: string): number | null {
  const digits = currencyDigits(currency);
  const match = /^(\d{1,12})(?:([.,])(\d+))?$/.exec(text.trim());
  if (match === null) return null;
  const [, whole = '0', mark, decimals = ''] = match;
  if (decimals.length > digits || (mark === ',' && decimals.length === 3)) return null;
  return Number(`${whole}${decimals.padEnd(digits, '0')}`);
}
