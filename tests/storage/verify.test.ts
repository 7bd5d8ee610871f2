import { cpSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, expect, test } from 'vitest';
import type { NewLedgerEntry } from '../../src/storage/ledger.ts';
import { appendLedger } from '../../src/storage/ledger.ts';
import { openBook } from '../../src/storage/open-book.ts';
import { verifyBook } from '../../src/storage/verify-book.ts';

const root = mkdtempSync(path.join(tmpdir(), 'keyout-verify-'));
afterAll(() => rmSync(root, { recursive: true, force: true }));

const shared = { written: '2026-11-24T12:00:00Z', day: '2026-11-24', files: [] };
const issued = (number: string, job = '2026-11-24-AAAA', grossMinorUnits = 100): NewLedgerEntry => ({
  event: 'issued',
  ...shared,
  number,
  jobs: [job],
  payer: 'oro-mesa',
  grossMinorUnits,
});
const credited = (number: string, invoice: string, grossMinorUnits = 100): NewLedgerEntry => ({
  event: 'credited',
  ...shared,
  number,
  invoice,
  grossMinorUnits,
});
const paid = (invoice: string): NewLedgerEntry => ({
  event: 'paid',
  ...shared,
  payment: 'PAY-0001',
  payer: 'oro-mesa',
  amountMinorUnits: 10,
  method: 'bank transfer',
  allocations: [{ invoice, amountMinorUnits: 10 }],
});
const jobs = ['2026-11-24-AAAA', '2026-11-24-BBBB', '2026-11-24-CCCC'];

test.each<[string, NewLedgerEntry[], RegExp[]]>([
  ['a series without gap or double', [issued('INV-0001', jobs[0]), issued('INV-0002', jobs[1])], []],
  ['a gap', [issued('INV-0001', jobs[0]), issued('INV-0003', jobs[1])], [/INV-0002 is missing/]],
  ['a missing beginning', [issued('INV-0003')], [/INV-0001, INV-0002 are missing/]],
  ['a double', [issued('INV-0001', jobs[0]), issued('INV-0001', jobs[1])], [/INV-0001 was given twice/]],
  ['a job billed twice', [issued('INV-0001'), issued('INV-0002')], [/AAAA is billed on INV-0001 and INV-0002/]],
  [
    'a job billed again after a whole credit',
    [issued('INV-0001'), credited('CRN-0001', 'INV-0001'), issued('INV-0002')],
    [],
  ],
  ['a credit note for nothing', [credited('CRN-0001', 'INV-0001')], [/never issued/]],
  [
    'a credit note that takes back too much',
    [issued('INV-0001'), credited('CRN-0001', 'INV-0001', 101)],
    [/more than/],
  ],
  ['a payment of no invoice', [paid('INV-0001')], [/no invoice/]],
])('verify judges %s', (_, entries, expected) => {
  const folder = mkdtempSync(path.join(root, 'book-'));
  cpSync(path.resolve(import.meta.dirname, '../../sample-jobs'), folder, { recursive: true });
  const book = openBook(folder);
  for (const each of entries) appendLedger(book, each);
  expect(verifyBook(book).map((each) => each.what)).toEqual(expected.map((each) => expect.stringMatching(each)));
});
