import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Book, book, type NumberSeries } from '../../src/records/book.ts';
import { placeOfNumber, seriesNumber, seriesStem } from '../../src/storage/number-series.ts';

const series = (prefix: string, more: Partial<NumberSeries> = {}): NumberSeries => ({
  prefix,
  digits: 4,
  yearly: false,
  start: 1,
  ...more,
});
const numbered = (numbering: Book['numbering']) => ({ numbering }) as Book;

describe('a number series', () => {
  test.each<[NumberSeries, string, number, string]>([
    [series('INV-'), '2026', 42, 'INV-0042'],
    [series('INV-', { yearly: true }), '2026', 42, 'INV-2026-0042'],
    [series('INV-', { digits: 1 }), '2026', 42, 'INV-42'],
    [series('V2-'), '2026', 12_345, 'V2-12345'],
  ])('%o in %s gives at place %i the number %s', (given, year, place, number) => {
    expect(seriesNumber(given, year, place)).toBe(number);
  });

  test('the place of any number that a series gave is found again, whatever the other series', () => {
    const prefix = fc.stringMatching(/^[A-Z][A-Z0-9-]{0,6}$/);
    const any = fc.record({
      prefix,
      digits: fc.integer({ min: 1, max: 8 }),
      yearly: fc.boolean(),
      start: fc.constant(1),
    });
    fc.assert(
      fc.property(any, any, fc.integer({ min: 1, max: 99_999 }), (invoice, creditNote, place) => {
        const parsed = book.shape.numbering.safeParse({ invoice, creditNote, vans: [] });
        if (!parsed.success) return;
        const open = numbered(parsed.data);
        for (const each of [invoice, creditNote])
          expect(placeOfNumber(open, seriesNumber(each, '2026', place), '2026')).toEqual({
            stem: seriesStem(each, '2026'),
            place,
          });
      }),
    );
  });

  test.each([
    ['the same prefix with other digits', 'INV-', 'INV-', false],
    ['a prefix that goes on with digits', 'INV', 'INV2', false],
    ['a prefix that goes on with a year', 'INV-', 'INV-2026-', false],
    ['a prefix that goes on with a letter', 'INV-', 'INV-N', true],
    ['two different prefixes', 'INV-', 'CRN-', true],
  ])('%s beside the first is told apart: %s, %s', (_, one, other, accepted) => {
    const parsed = book.shape.numbering.safeParse({
      invoice: series(one),
      creditNote: series(other, { digits: 5 }),
      vans: [],
    });
    expect(parsed.success).toBe(accepted);
  });

  test('invoices and credit notes may share one series', () => {
    expect(book.shape.numbering.safeParse({ invoice: series('D-'), creditNote: series('D-') }).success).toBe(true);
  });
});
