import { cpSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { changeBook } from '../../src/storage/change-book.ts';
import { openBook } from '../../src/storage/open-book.ts';
import { type NewPayment, readPayments, recordPayment } from '../../src/storage/record-payment.ts';

const root = mkdtempSync(path.join(tmpdir(), 'keyout-payment-names-'));
afterAll(() => rmSync(root, { recursive: true, force: true }));

const payment = (more: Partial<NewPayment> = {}): NewPayment => ({
  day: '2026-11-25',
  payer: 'north-lattice',
  amountMinorUnits: 5000,
  method: 'bank transfer',
  currency: 'USD',
  allocations: [],
  ...more,
});

test('names of payments never repeat, also after one was taken back', async () => {
  cpSync(path.resolve(import.meta.dirname, '../../sample-jobs'), root, { recursive: true });
  const book = openBook(root);
  await changeBook(book, { now: '2026-11-25T10:00:00Z', draw: async () => [] }, async (changing) => {
    recordPayment(changing, payment());
    recordPayment(changing, payment({ amountMinorUnits: 700 }));
    recordPayment(changing, payment({ amountMinorUnits: -5000, reverses: 'PAY-0001' }));
    recordPayment(changing, payment({ amountMinorUnits: 900 }));
    recordPayment(changing, payment({ amountMinorUnits: -700, reverses: 'PAY-0002' }));
    recordPayment(changing, payment({ amountMinorUnits: 1100 }));
  });
  expect(readPayments(book).map((each) => each.payment)).toEqual([
    'PAY-0001',
    'PAY-0002',
    'PAY-0003',
    'PAY-0004',
    'PAY-0005',
    'PAY-0006',
  ]);
});
