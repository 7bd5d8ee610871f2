import { oneOf, type PricedLine } from '../../src/pricing/priced-line.ts';
import { type Book, book, type LineKind } from '../../src/records/book.ts';
import { type Job, job } from '../../src/records/job.ts';
import { type Payer, payer } from '../../src/records/payer.ts';
import { soundFacts, soundJob, soundPayer } from '../../src/rules/sound-job.ts';
import { makeInvoice } from './worded.ts';

/** What the book says of tax. */
type Tax = Partial<Book['tax']>;
export const sound = soundFacts(soundJob).book;
/** A sound book with tax rules of its own. */
export const bookOf = (tax: Tax, changed: Partial<Book> = {}) =>
  book.parse({ ...sound, ...changed, tax: { ...sound.tax, regime: 'VAT', ...tax } });
/** A job on one day of June. */
export const jobOf = (id: string, changed: Partial<Job> = {}) =>
  job.parse({ schema: 'keyout-job-1', id: `2026-06-05-${id}`, day: '2026-06-05', ...changed });
/** A line at a price. */
export const line = (kind: LineKind, priceMinorUnits: number | string, quantity = '1') =>
  oneOf(kind, 'Something', priceMinorUnits, 'as agreed', quantity);

/** The invoice over one job's lines. */
export function invoice(
  owner: Book,
  lines: readonly PricedLine[],
  changed: { readonly payer?: Partial<Payer>; readonly job?: Partial<Job>; readonly discount?: string } = {},
) {
  return makeInvoice({
    number: 'draft',
    issued: '2026-06-30',
    book: owner,
    payer: payer.parse({ ...soundPayer, ...changed.payer }),
    jobs: [{ job: jobOf('AAAA', changed.job), lines }],
    documentDiscountPercent: changed.discount ?? '0',
    documentDiscountBecause: 'many vehicles',
  });
}

/** A tax code. */
export const code = (id: string, category: string, rates: readonly string[] = [], more: object = {}) => ({
  id,
  name: id,
  category,
  jurisdictions: rates.map((ratePercent, place) => ({ name: `Place ${place + 1}`, ratePercent })),
  ...more,
});
/** Tax rules of codes and the lines they are for. */
export const taxed = (codes: readonly object[], lines: object, more: object = {}) =>
  ({ codes, lines, ...more }) as unknown as Tax;
