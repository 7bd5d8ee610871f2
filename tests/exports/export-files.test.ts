import { parse } from 'csv-parse/sync';
import { Decimal } from 'decimal.js';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { exportFiles, isExportedFile } from '../../src/exports/export-files.ts';
import type { ExportInput } from '../../src/exports/export-input.ts';
import { postJournal } from '../../src/exports/ledger-files/post-journal.ts';
import { agedBalances } from '../../src/pricing/aged-balances.ts';
import { addDays } from '../../src/quantities/calendar-date.ts';
import { book } from '../../src/records/book.ts';
import type { IssuedInvoice } from '../../src/records/issued-invoice.ts';
import type { LedgerEntry } from '../../src/records/ledger-entry.ts';
import { trip } from '../../src/records/trip.ts';
import { makeCreditNote } from '../pricing/worded.ts';
import { variants } from './document-variants.ts';
import { sampleDocument } from './sample-documents.ts';

const accounts = book.shape.accounts.parse({ discounts: '4900' });
const plain = { decimalComma: false, byteOrderMark: false };

type Step =
  | { readonly kind: 'invoice'; readonly document: IssuedInvoice }
  | { readonly kind: 'credit'; readonly of: string; readonly all: boolean }
  | { readonly kind: 'payment'; readonly of: string; readonly amount: number; readonly allocated: number };

/** A ledger and its documents, one step a day from the first of the month. */
function played(steps: readonly Step[], currency: string): ExportInput {
  const documents: IssuedInvoice[] = [];
  const entries: LedgerEntry[] = [];
  for (const [place, step] of steps.entries()) {
    const day = addDays('2026-12-01', place);
    const shared = { sequence: place + 1, previous: '0'.repeat(64), written: `${day}T12:00:00Z`, day, files: [] };
    if (step.kind === 'invoice') {
      const number = `INV-${String(place).padStart(4, '0')}`;
      const document = { ...step.document, number, issued: day, due: addDays(day, 14) };
      documents.push(document);
      const { grossMinorUnits } = document.totals;
      entries.push({ event: 'issued', ...shared, number, jobs: [], payer: document.payerId, grossMinorUnits });
      continue;
    }
    const invoice = documents.find((each) => each.number === step.of);
    if (invoice === undefined) continue;
    if (step.kind === 'payment') {
      const allocations = [{ invoice: step.of, amountMinorUnits: step.allocated }];
      const payment = `PAY-${place}`;
      const { payerId: payer } = invoice;
      entries.push({
        event: 'paid',
        ...shared,
        payment,
        payer,
        amountMinorUnits: step.amount,
        method: 'transfer',
        reference: '=1+1',
        allocations,
      });
      continue;
    }
    const earlier = documents.filter((each) => each.corrects?.number === step.of);
    const line = invoice.lines[0];
    if (line === undefined || (earlier.length > 0 && step.all === false)) continue;
    const number = `CRN-${String(place).padStart(4, '0')}`;
    const lines = step.all ? 'all' : [{ number: line.number, amountMinorUnits: 1 }];
    try {
      const credit = makeCreditNote({ invoice, lines, number, issued: day, because: 'Wrong', earlier });
      documents.push(credit);
      const { grossMinorUnits } = credit.totals;
      entries.push({ event: 'credited', ...shared, number, invoice: step.of, grossMinorUnits });
    } catch (error) {
      if (!(error instanceof Error) || !/left to credit/.test(error.message)) throw error;
    }
  }
  return {
    from: '2026-12-01',
    to: '2026-12-31',
    documents,
    entries,
    trips: [],
    structured: new Map(),
    accounts,
    currency,
  };
}

type Rows = readonly Readonly<Record<string, string>>[];
const rowsOf = (files: ReadonlyMap<string, string>, name: string): Rows =>
  parse(files.get(name) ?? '', { columns: true, bom: true, record_delimiter: '\r\n' }) as Rows;
const sum = (rows: Rows, column: string) =>
  rows.reduce((all, row) => all.plus(row[column] || '0'), new Decimal(0)).toString();
const minor = (documents: readonly IssuedInvoice[], of: (document: IssuedInvoice) => number, digits = 2) =>
  documents
    .reduce((all, each) => all.plus(new Decimal(of(each)).times(each.type === 'invoice' ? 1 : -1)), new Decimal(0))
    .div(10 ** digits)
    .toString();

const month = played(
  [
    { kind: 'invoice', document: variants['euro, two rates'] ?? sampleDocument({}) },
    { kind: 'invoice', document: variants['exempt beside taxed'] ?? sampleDocument({}) },
    { kind: 'payment', of: 'INV-0000', amount: 30_000, allocated: 12_345 },
    { kind: 'credit', of: 'INV-0001', all: false },
    { kind: 'credit', of: 'INV-0001', all: true },
    { kind: 'payment', of: 'INV-0001', amount: 500, allocated: 500 },
  ],
  'EUR',
);

describe('the files of a month', () => {
  const made = () => exportFiles(month, plain);

  test('are the same bytes when made again', () => {
    expect([...exportFiles(month, plain)]).toEqual([...made()]);
  });

  test('are all known as such, and nothing else is', () => {
    expect([...made().keys()].filter((name) => !isExportedFile(name))).toEqual([]);
    expect(['notes.txt', 'structured/../register.csv', 'Register.csv'].filter(isExportedFile)).toEqual([]);
  });

  test('every control total agrees, and the totals agree with sums over the records', () => {
    const controls = rowsOf(made(), 'control-totals.csv');
    expect(controls.filter((row) => row.compared_amount !== '').length).toBeGreaterThan(10);
    expect(controls.filter((row) => row.difference !== '' && row.difference !== '0')).toEqual([]);
    const register = rowsOf(made(), 'register.csv');
    expect(sum(register, 'net')).toBe(minor(month.documents, (each) => each.totals.netMinorUnits));
    expect(sum(register, 'tax')).toBe(minor(month.documents, (each) => each.totals.taxMinorUnits));
    expect(sum(register, 'gross')).toBe(minor(month.documents, (each) => each.totals.grossMinorUnits));
    expect(
      controls.find((row) => row.file === 'register.csv' && row.what === 'rows below the column headings')?.count,
    ).toBe(String(month.documents.length));
  });

  test('the lines recompute by quantity, price and discount', () => {
    for (const row of rowsOf(made(), 'lines.csv').filter((each) => each.line !== '')) {
      const amount = new Decimal(row.quantity ?? '').times(row.price ?? '').div(row.price_per ?? '');
      expect(
        amount
          .toDecimalPlaces(2, Decimal.ROUND_HALF_UP)
          .minus(row.discount ?? '')
          .toFixed(2),
      ).toBe(row.net);
    }
  });

  test('each booking of the journal balances, credit notes the other way round', () => {
    const journal = rowsOf(made(), 'journal.csv');
    for (const entry of new Set(journal.map((row) => row.entry))) {
      const own = journal.filter((row) => row.entry === entry);
      expect(sum(own, 'debit'), entry).toBe(sum(own, 'credit'));
    }
    const income = journal.filter((row) => row.account === '4000');
    expect(income.filter((row) => row.document?.startsWith('INV')).every((row) => row.debit === '')).toBe(true);
    expect(income.filter((row) => row.document?.startsWith('CRN')).every((row) => row.credit === '')).toBe(true);
    expect(journal.filter((row) => row.text === 'Payment PAY-2, not allocated').map((row) => row.credit)).toEqual([
      '176.55',
    ]);
  });

  test('every column of every file is described, and no other', () => {
    const described = rowsOf(made(), 'columns.csv').map((row) => `${row.file} ${row.column}`);
    const there = [...made()]
      .filter(([name]) => name.endsWith('.csv'))
      .flatMap(([name, text]) => (text.split('\r\n')[0] ?? '').split(',').map((column) => `${name} ${column}`));
    expect(described).toEqual(there);
  });

  test("a customer's text runs in no spreadsheet", () => {
    expect(rowsOf(made(), 'payments.csv').map((row) => row.reference)).toEqual(["'=1+1", "'=1+1"]);
  });

  test('each document has its structured file, or a row that says why not', () => {
    const structured = [...made().keys()].filter((name) => name.startsWith('structured/'));
    const without = rowsOf(made(), 'without-structured-file.csv');
    expect(structured.length + without.length).toBe(month.documents.length);
    expect(without).toEqual([]);
  });
});

describe('the control totals tell when files and ledger part', () => {
  const differing = (input: ExportInput) =>
    rowsOf(exportFiles(input, plain), 'control-totals.csv')
      .filter((row) => row.difference !== '' && row.difference !== '0')
      .map((row) => `${row.file} ${row.what}: ${row.difference}`);

  test('a document that the ledger speaks of is not there', () => {
    const gone = month.documents.find((each) => each.number === 'INV-0001');
    const left = { ...month, documents: month.documents.filter((each) => each !== gone) };
    expect(differing(left)).toContain('register.csv how many invoices: -1');
  });

  test('an amount of the ledger is another', () => {
    const entries = month.entries.map((entry) =>
      entry.event === 'issued' && entry.number === 'INV-0000' ? { ...entry, grossMinorUnits: 1 } : entry,
    );
    expect(differing({ ...month, entries })).toEqual([expect.stringMatching(/^register.csv invoices, gross: /)]);
  });

  test('a sum of a document does not follow', () => {
    const documents = month.documents.map((each) =>
      each.number === 'INV-0000' ? { ...each, totals: { ...each.totals, netMinorUnits: 7 } } : each,
    );
    expect(differing({ ...month, documents })).toHaveLength(3);
  });
});

test('dinars are exact to three decimals in every file, and the structured file is refused with its reason', () => {
  const dinar = played([{ kind: 'invoice', document: sampleDocument({ with: { currency: 'KWD' } }) }], 'KWD');
  const files = exportFiles(dinar, plain);
  expect(rowsOf(files, 'register.csv')[0]).toMatchObject({ net: '10.000', tax: '2.000', gross: '12.000' });
  expect(rowsOf(files, 'without-structured-file.csv')[0]?.lacks).toContain('three decimals'.replace('three', '3'));
  expect([...files.keys()].filter((name) => name.startsWith('structured/'))).toEqual([]);
});

test('trips are listed with what was billed of them', () => {
  const travel = { kind: 'travel distance', what: 'Travel' } as const;
  const document = sampleDocument({ lines: [{ ...travel, quantity: '1', unitPriceMinorUnits: '1421' }] });
  const one = trip.parse({
    schema: 'keyout-trip-1',
    day: '2026-12-01',
    distance: '118.5',
    unit: 'mi',
    travelMinutes: 140,
    tollsMinorUnits: 725,
    jobs: [{ job: '2026-11-24-KX4D' }],
  });
  const files = exportFiles({ ...played([{ kind: 'invoice', document }], 'EUR'), trips: [one] }, plain);
  expect(rowsOf(files, 'trips.csv')[0]).toMatchObject({ distance: '118.5', unit: 'mi', tolls: '7.25', jobs: '1' });
  expect(rowsOf(files, 'trip-shares.csv')[0]).toMatchObject({ billed_distance: '14.21', documents: 'INV-0000' });
});

test('whatever is billed, credited and paid: every difference is zero and the accounts agree with the balances', () => {
  const names = Object.keys(variants).filter((name) => variants[name]?.currency === 'EUR');
  const step = fc.oneof(
    fc
      .constantFrom(...names)
      .map((name): Step => ({ kind: 'invoice', document: variants[name] ?? sampleDocument({}) })),
    fc.record({ kind: fc.constant('credit' as const), of: fc.nat(6).map((n) => `INV-000${n}`), all: fc.boolean() }),
    fc.record({
      kind: fc.constant('payment' as const),
      of: fc.nat(6).map((n) => `INV-000${n}`),
      amount: fc.nat(40_000),
      allocated: fc.nat(40_000),
    }),
  );
  fc.assert(
    fc.property(fc.array(step, { maxLength: 12 }), fc.nat(15), (steps, last) => {
      const input = { ...played(steps, 'EUR'), to: addDays('2026-12-01', last) };
      const controls = rowsOf(exportFiles(input, plain), 'control-totals.csv');
      expect(controls.filter((row) => row.difference !== '' && row.difference !== '0')).toEqual([]);
      const postings = postJournal(input).flatMap((entry) => entry.postings);
      const balance = (account: string) =>
        postings.filter((each) => each.account === account).reduce((all, each) => all + each.amountMinorUnits, 0);
      const payments = input.entries.filter((entry) => entry.event === 'paid');
      const aged = agedBalances(input.documents, payments, input.to);
      const total = aged.reduce((all, each) => all + each.totalMinorUnits, 0);
      expect(balance(accounts.receivable) + balance(accounts.customerCredit)).toBe(total);
      expect(postings.reduce((all, each) => all + each.amountMinorUnits, 0)).toBe(0);
    }),
    { numRuns: 60 },
  );
});
