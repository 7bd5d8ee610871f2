import { writeTable } from '../commands/write-table.ts';
import { writeMoney } from '../quantities/write-money.ts';
import type { OpenBook } from '../storage/open-book.ts';
import { type RecordedPayment, readPayments } from '../storage/record-payment.ts';

/** A payment with the one that took it back, or null. */
export type ListedPayment = RecordedPayment & { readonly takenBackBy: string | null };

/**
 * The payments of the book, or of one payer, in the order in which they were recorded.
 * @param book the open book
 * @param payer the payer's id, or null for all
 */
export function listedPayments(book: OpenBook, payer: string | null): readonly ListedPayment[] {
  const all = readPayments(book);
  return all
    .filter((each) => payer === null || each.payer === payer)
    .map((each) => ({ ...each, takenBackBy: all.find((one) => one.reverses === each.payment)?.payment ?? null }));
}

/**
 * The list for the terminal.
 * @param book the open book
 * @param payments the payments
 */
export function writePaymentList(book: OpenBook, payments: readonly ListedPayment[]): string {
  if (payments.length === 0) return 'No payment is recorded.';
  const rows = payments.map((each) => [
    each.payment,
    each.day,
    writeMoney(each.amountMinorUnits, each.currency ?? book.book.currency, book.book.locale),
    each.payer,
    each.method,
    each.reference ?? '',
    each.allocations.map((part) => part.invoice).join(' '),
    each.takenBackBy === null
      ? each.reverses === undefined
        ? ''
        : `takes back ${each.reverses}`
      : `taken back by ${each.takenBackBy}`,
  ]);
  return writeTable([['payment', 'day', 'amount', 'payer', 'method', 'reference', 'invoices', ''], ...rows]);
}
