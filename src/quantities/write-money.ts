import { currencyDigits } from './currency-digits.ts';

/**
 * Money as it is written in a locale ("$1,234.50", "1.234,50 €").
 * @param minorUnits whole minor units
 * @param currency three-letter code
 * @param locale such as "en-US"
 */
export function writeMoney(minorUnits: number, currency: string, locale: string): string {
  const digits = currencyDigits(currency);
  const text = String(Math.abs(minorUnits)).padStart(digits + 1, '0');
  const decimal = digits === 0 ? text : `${text.slice(0, -digits)}.${text.slice(-digits)}`;
  const format = new Intl.NumberFormat(locale, {
    style: 'currency',
    currency,
    minimumFractionDigits: digits,
    maximumFractionDigits: digits,
  });
  return format.format(`${minorUnits < 0 ? '-' : ''}${decimal}` as unknown as number).replace('\u202f', '\u00a0');
}
