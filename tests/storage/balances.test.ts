import { cpSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import fc from 'fast-check';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { composePayment, type PaymentRequest, reversalOf } from '../../src/operations/compose-payment.ts';
import { draftInvoice } from '../../src/operations/draft-invoice.ts';
import { agedBalances } from '../../src/pricing/aged-balances.ts';
import { Problem } from '../../src/problem.ts';
import type { IssuedInvoice } from '../../src/records/issued-invoice.ts';
import { changeBook } from '../../src/storage/change-book.ts';
import type { ChangingBook } from '../../src/storage/changing-book.ts';
import { issueDocument } from '../../src/storage/issue-document.ts';
import { creditNotesOf, readIssued } from '../../src/storage/issued.ts';
import { readJob } from '../../src/storage/jobs.ts';
import { openBook } from '../../src/storage/open-book.ts';
import { readPayments, recordPayment } from '../../src/storage/record-payment.ts';
import { verifyBook } from '../../src/storage/verify-book.ts';
import { makeCreditNote } from '../pricing/worded.ts';

const root = mkdtempSync(path.join(tmpdir(), 'keyout-balances-'));
afterAll(() => rmSync(root, { recursive: true, force: true }));
const samples = path.resolve(import.meta.dirname, '../../sample-jobs');
const day = '2026-11-24';
const drafts: IssuedInvoice[] = [];
beforeAll(async () => {
  const book = openBook(samples);
  for (const job of ['2026-11-24-KX4D', '2026-11-24-M2WB', '2026-11-24-P9HC', '2026-11-24-ZV3E'])
    drafts.push(await draftInvoice(book, [readJob(book, job)], day));
});

type Step = { readonly what: number; readonly which: number; readonly amount: number };
const step = fc.record({
  what: fc.integer({ min: 0, max: 7 }),
  which: fc.nat(20),
  amount: fc.integer({ min: 1, max: 40_000 }),
});

function sumOf(numbers: readonly number[]): number {
  return numbers.reduce((sum, each) => sum + each, 0);
}

async function take(changing: ChangingBook, { what, which, amount }: Step): Promise<void> {
  const { open } = changing;
  const invoices = readIssued(open)
    .map((each) => each.invoice)
    .filter((each) => each.type === 'invoice');
  const invoice = invoices[which % Math.max(1, invoices.length)];
  const draft = drafts[which % drafts.length];
  if (what === 0 || invoice === undefined) {
    if (draft !== undefined) await issueDocument(changing, { draft: { ...draft, vehicles: [] }, van: null });
    return;
  }
  if (what === 1 || what === 2) {
    const lines =
      what === 1 ? 'all' : [{ number: (which % invoice.lines.length) + 1, amountMinorUnits: amount % 5000 }];
    const earlier = creditNotesOf(open, invoice.number);
    const note = makeCreditNote({ invoice, lines, number: 'draft', issued: day, because: 'agreed', earlier });
    await issueDocument(changing, { draft: note, van: null });
    return;
  }
  if (what === 7) {
    const payments = readPayments(open);
    recordPayment(changing, reversalOf(open, payments[which % payments.length]?.payment ?? 'PAY-0001', day, 'mistake'));
    return;
  }
  const request: PaymentRequest = {
    kind: what === 5 ? 'use of credit' : what === 6 ? 'refund' : 'payment',
    payer: invoice.payerId,
    currency: invoice.currency,
    amountMinorUnits: what === 4 ? amount : what === 3 ? amount % 900 || 1 : null,
    named: what === 3 ? [] : [{ invoice: invoice.number, amountMinorUnits: null }],
    day,
    method: 'cash',
  };
  recordPayment(changing, composePayment(open, request));
}

test('whatever is issued, credited, paid, used, paid back and taken back, balances are what was charged less what was credited and paid', async () => {
  await fc.assert(
    fc.asyncProperty(fc.array(step, { minLength: 5, maxLength: 25 }), async (steps) => {
      const folder = mkdtempSync(path.join(root, 'book-'));
      cpSync(samples, folder, { recursive: true });
      const book = openBook(folder);
      const by = { now: '2026-11-24T18:00:00Z', draw: async () => [{ name: 'invoice.pdf', content: 'drawing' }] };
      for (const each of steps)
        await changeBook(book, by, (changing) => take(changing, each)).catch((error: unknown) => {
          if (!(error instanceof Problem)) throw error;
        });
      const documents = readIssued(book).map((each) => each.invoice);
      const payments = readPayments(book);
      const signed = documents.map((each) => (each.type === 'invoice' ? 1 : -1) * each.totals.dueMinorUnits);
      const balances = agedBalances(documents, payments, day);
      expect(sumOf(balances.map((each) => each.totalMinorUnits))).toBe(
        sumOf(signed) - sumOf(payments.map((each) => each.amountMinorUnits)),
      );
      for (const each of balances) {
        expect(each.creditMinorUnits).toBeGreaterThanOrEqual(0);
        for (const bucket of Object.values(each.buckets)) expect(bucket).toBeGreaterThanOrEqual(0);
      }
      expect(verifyBook(book)).toEqual([]);
    }),
    { numRuns: 12, seed: 4, endOnFailure: true },
  );
});
