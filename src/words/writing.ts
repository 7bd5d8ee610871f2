import { documentLocale } from '../quantities/document-locale.ts';
import { millivoltsFromVolts, writeVolts } from '../quantities/millivolts.ts';
import { writeMoney, writePrice } from '../quantities/write-money.ts';
import type { Book } from '../records/book.ts';
import type { Language } from '../records/language.ts';
import type { KeyWords } from './key-words.ts';
import type { Speech } from './speech.ts';
import { speechFor } from './speech-for.ts';
import type { Words } from './words.ts';
import { wordsIn } from './words-in.ts';

/** How figures, dates and money are written in one document. */
export type Writing = Words & {
  readonly language: Language;
  readonly locale: string;
  /** "November 24, 2026", whatever the machine's own zone */
  readonly date: (date: string) => string;
  /** "November 24, 2026, 09:05" from a local moment */
  readonly moment: (localTime: string) => string;
  /** a whole number with its thousands separated */
  readonly whole: (value: number) => string;
  /** a decimal text or number with the locale's own mark */
  readonly decimal: (value: string | number) => string;
  /** a rate in percent */
  readonly percent: (value: string) => string;
  /** volts from millivolts, two decimals */
  readonly millivolts: (millivolts: number) => string;
  /** volts from a record's number */
  readonly volts: (volts: number) => string;
  /** a length in the book's unit, from millimetres */
  readonly length: (millimetres: number) => string;
  /** whole minor units */
  readonly money: (minorUnits: number) => string;
  /** a price in minor units with decimals ("72.5" cents as $0.725) */
  readonly unitPrice: (minorUnits: string) => string;
  readonly country: (code: string) => string;
  /** how facts about a vehicle's wires and findings are said in this document */
  readonly speech: (vehicle: KeyWords) => Speech;
};

const minus = (text: string) => text.replace('-', '−');

/**
 * How a document in a language is written: its words, and its figures in the locale and units of the book.
 * @param book the business's locale, units and currency
 * @param language the document's language
 * @param currency three-letter code
 */
export function writingFor(book: Pick<Book, 'locale' | 'units'>, language: Language, currency: string): Writing {
  const locale = documentLocale(book.locale, language);
  const own = wordsIn(language);
  const day = new Intl.DateTimeFormat(locale, { timeZone: 'UTC', year: 'numeric', month: 'long', day: 'numeric' });
  const number = new Intl.NumberFormat(locale, { maximumFractionDigits: 6 });
  const whole = new Intl.NumberFormat(locale, { maximumFractionDigits: 0 });
  const mark = number.formatToParts(1.5).find((part) => part.type === 'decimal')?.value === ',' ? ',' : '.';
  const decimal = (value: string | number) => minus(number.format(value as number));
  const date = (text: string) =>
    day.format(new Date(Date.UTC(Number(text.slice(0, 4)), Number(text.slice(5, 7)) - 1, Number(text.slice(8, 10)))));
  const percent = new Intl.NumberFormat(locale, { style: 'percent', maximumFractionDigits: 6 });
  const countries = new Intl.DisplayNames([locale], { type: 'region' });
  const millivolts = (value: number) => minus(writeVolts(value, mark));
  return {
    ...own,
    language,
    locale,
    date,
    moment: (text) => `${date(text.slice(0, 10))}, ${text.slice(11)}`,
    whole: (value) => whole.format(value),
    decimal,
    percent: (value) => percent.format(Number(value) / 100).replace('\u202f', '\u00a0'),
    millivolts,
    volts: (value) => millivolts(millivoltsFromVolts(value)),
    length: (millimetres) =>
      book.units.length === 'mm'
        ? `${decimal(millimetres)}\u00a0${own.terms.units.mm}`
        : `${decimal(Math.round(millimetres / 2.54) / 10)}\u00a0${own.terms.units.in}`,
    money: (minorUnits) => minus(writeMoney(minorUnits, currency, locale)),
    unitPrice: (minorUnits) => minus(writePrice(minorUnits, currency, locale)),
    country: (code) => countries.of(code) ?? code,
    speech: (vehicle) => speechFor(own, vehicle, { mark, minus: '−', gap: '\u00a0', day: date }),
  };
}
