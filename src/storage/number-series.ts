import { Problem } from '../problem.ts';
import type { Book, NumberSeries } from '../records/book.ts';
import type { IssuedInvoice } from '../records/issued-invoice.ts';

/** The place of a number in its series. */
export type NumberPlace = { readonly stem: string; readonly place: number };

/** What stands before the counting digits ("INV-", "INV-2026-"). */
export function seriesStem(series: NumberSeries, year: string): string {
  return `${series.prefix}${series.yearly ? `${year}-` : ''}`;
}

/** The number at a place of a series ("INV-0042", "INV-2026-0042"). */
export function seriesNumber(series: NumberSeries, year: string, place: number): string {
  return `${seriesStem(series, year)}${String(place).padStart(series.digits, '0')}`;
}

/**
 * The series that a document is numbered in.
 * @param book the business
 * @param type invoice or credit note
 * @param van the van that issues on its own, or null
 * @throws Problem when the book has no such van
 */
export function seriesFor(book: Book, type: IssuedInvoice['type'], van: string | null): NumberSeries {
  const own = van === null ? book.numbering : book.numbering.vans.find((each) => each.id === van);
  if (own === undefined) {
    const known = book.numbering.vans.map((each) => each.id);
    throw new Problem(
      `The book has no number series for the van "${van}".`,
      'book.json, numbering.vans',
      known.length === 0 ? 'Add the van there, with its own prefixes.' : `Use one of ${known.join(', ')}, or add it.`,
      2,
    );
  }
  return type === 'invoice' ? own.invoice : own.creditNote;
}

/**
 * The place of a number that was given: by the book's series where one of them gives that number, else by its last digits.
 * @param book the business
 * @param number the number
 * @param year the year of issue
 */
export function placeOfNumber(book: Book, number: string, year: string): NumberPlace {
  for (const owner of [book.numbering, ...book.numbering.vans])
    for (const series of [owner.invoice, owner.creditNote]) {
      const stem = seriesStem(series, year);
      const place = number.startsWith(stem) ? Number(number.slice(stem.length)) : Number.NaN;
      if (Number.isInteger(place) && seriesNumber(series, year, place) === number) return { stem, place };
    }
  const digits = /\d+$/.exec(number)?.[0] ?? '';
  return { stem: number.slice(0, number.length - digits.length), place: Number(digits) };
}
