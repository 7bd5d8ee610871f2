import type { LedgerEntry } from '../records/ledger-entry.ts';
import type { ChangingBook } from './changing-book.ts';
import { appendLedger, readLedger } from './ledger.ts';
import type { OpenBook } from './open-book.ts';

/** A payment as the ledger holds it. */
export type RecordedPayment = Extract<LedgerEntry, { event: 'paid' }>;
/** A payment before it has a name. */
export type NewPayment = Omit<RecordedPayment, 'sequence' | 'previous' | 'written' | 'event' | 'payment' | 'files'>;

/** Every payment of the book, in the order in which they were recorded. */
export function readPayments(open: OpenBook): readonly RecordedPayment[] {
  return readLedger(open).filter((entry) => entry.event === 'paid');
}

/**
 * Enters a payment in the ledger, under the next name ("PAY-0007").
 * @param changing the book, held against other writers
 * @param payment the payment
 */
export function recordPayment(changing: ChangingBook, payment: NewPayment): RecordedPayment {
  const count = readPayments(changing.open).length + 1;
  const entry = appendLedger(changing.open, {
    event: 'paid',
    ...payment,
    written: changing.now,
    payment: `PAY-${String(count).padStart(4, '0')}`,
    files: [],
  });
  return entry as RecordedPayment;
}

/**
 * A payment recorded earlier that looks like the same money, or null; those taken back do not count.
 * The same: a reference that the payer used before; without one, the same amount by the same method on the same day.
 * @param payments the payments recorded so far
 * @param payment the one about to be recorded
 */
export function likePayment(payments: readonly RecordedPayment[], payment: NewPayment): RecordedPayment | null {
  // no money came: a payer's credit cannot be used twice
  if (payment.amountMinorUnits === 0) return null;
  const takenBack = new Set(payments.flatMap((each) => each.reverses ?? []));
  return (
    payments.find((each) => {
      if (each.payer !== payment.payer || each.reverses !== undefined || takenBack.has(each.payment)) return false;
      if (payment.reference !== undefined && each.reference === payment.reference) return true;
      return (
        (payment.reference === undefined || each.reference === undefined) &&
        each.amountMinorUnits === payment.amountMinorUnits &&
        each.day === payment.day &&
        each.method === payment.method
      );
    }) ?? null
  );
}
