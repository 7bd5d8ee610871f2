import { book } from '../../src/records/book.ts';
import { job } from '../../src/records/job.ts';
import { soundJob, soundPayer } from '../../src/rules/sound-job.ts';
import { makeCreditNote, makeInvoice } from '../pricing/worded.ts';

/** An invented business; it proves no computation. */
export const exampleBook = book.parse({
  schema: 'keyout-book-1',
  business: {
    name: 'Example fitting',
    installer: 'An Example',
    address: { lines: ['1 Example Road'], city: 'Example', country: 'US' },
  },
  currency: 'USD',
  timeZone: 'UTC',
  tax: { regime: 'none' },
  numbering: { invoice: { prefix: 'INV-' }, creditNote: { prefix: 'CRN-' } },
  payment: { link: 'https://pay.example/{number}/{amount}', accountName: 'Example fitting', accountNumber: '123' },
});

const plain = { discountMinorUnits: 0, discountBecause: '', baseQuantity: '1' } as const;

/** A flat rate. */
export const examplePricedLine = {
  kind: 'flat rate',
  what: 'New fit',
  because: '',
  quantity: '1',
  unit: 'each',
  unitPriceMinorUnits: '14500',
  ...plain,
} as const;

/** An invoice over a flat rate and a length of cable priced in fractions of a cent. */
export const exampleInvoice = makeInvoice({
  number: 'INV-0001',
  issued: '2026-11-24',
  book: exampleBook,
  payer: soundPayer,
  jobs: [
    {
      job: job.parse(soundJob),
      lines: [
        examplePricedLine,
        {
          kind: 'parts',
          what: 'Cable',
          because: '',
          quantity: '2.5',
          unit: 'metre',
          unitPriceMinorUnits: '72.5',
          ...plain,
        },
      ],
    },
  ],
  documentDiscountPercent: '0',
  documentDiscountBecause: '',
});

/** A credit note over its first line. */
export const exampleCredit = makeCreditNote({
  invoice: exampleInvoice,
  lines: [{ number: 1 }],
  number: 'CRN-0001',
  issued: '2026-11-26',
  because: 'agreed',
  earlier: [],
});
