import type { ListedPayment } from '../operations/listed-payments.ts';
import { writeMoney } from '../quantities/write-money.ts';
import type { OpenBook } from '../storage/open-book.ts';
import { writeTable } from './write-table.ts';

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
