import { currencyDigits } from './currency-digits.ts';
import { majorPriceText, majorText } from './major-units.ts';

const formats = new Map<string, Intl.NumberFormat>();

// a format takes longer to make than a hundred amounts to write
function formatOf(currency: string, locale: string, digits: number, digitsMax: number): Intl.NumberFormat {
  const key = `${currency} ${locale} ${digitsMax}`;
  const known = formats.get(key);
  if (known !== undefined) return known;
  const format = new Intl.NumberFormat(locale, {
    style: 'currency',
    currency,
    minimumFractionDigits: digits,
    maximumFractionDigits: digitsMax,
  });
  formats.set(key, format);
  return format;
}

/**
 * Money as it is written in a locale ("$1,234.50", "1.234,50 €").
 * @param minorUnits whole minor units
 * @param currency three-letter code
 * @param locale such as "en-US"
 */
export function writeMoney(minorUnits: number, currency: string, locale: string): string {
  const digits = currencyDigits(currency);
  const format = formatOf(currency, locale, digits, digits);
  return format.format(majorText(minorUnits, digits) as unknown as number).replace('\u202f', '\u00a0');
}

/**
 * A unit price as it is written in a locale, with the decimals it has beyond the minor unit ("72.5" cents to "$0.725").
 * @param minorUnits decimal text, minor units
 * @param currency three-letter code
 * @param locale such as "en-US"
 */
export function writePrice(minorUnits: string, currency: string, locale: string): string {
  const digits = currencyDigits(currency);
  const format = formatOf(currency, locale, digits, digits + 6);
  return format.format(majorPriceText(minorUnits, digits) as unknown as number).replace('\u202f', '\u00a0');
}
