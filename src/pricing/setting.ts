import { documentLocale } from '../quantities/document-locale.ts';
import { writeMoney, writePrice } from '../quantities/write-money.ts';
import type { Book } from '../records/book.ts';
import type { PricingWords, Wording } from './pricing-words.ts';

/** Where and in which words a job is priced. */
export type Setting = {
  readonly timeZone: string;
  readonly words: PricingWords;
  /** whole minor units */
  readonly money: (minorUnits: number) => string;
  /** a unit price, in decimals of the minor unit */
  readonly price: (minorUnits: string) => string;
  /** a decimal text with the locale's mark */
  readonly decimal: (text: string) => string;
};

/**
 * How lines are worded: in the invoice's language, with figures as the business's country writes them.
 * @param book time zone, locale and currency of the business
 * @param wording the invoice's language and its words
 */
export function settingOf(book: Pick<Book, 'timeZone' | 'locale' | 'currency'>, wording: Wording): Setting {
  const locale = documentLocale(book.locale, wording.language);
  const number = new Intl.NumberFormat(locale, { maximumFractionDigits: 6 });
  return {
    timeZone: book.timeZone,
    words: wording.words,
    money: (minorUnits) => writeMoney(minorUnits, book.currency, locale),
    price: (minorUnits) => writePrice(minorUnits, book.currency, locale),
    decimal: (text) => number.format(text as unknown as number),
  };
}
