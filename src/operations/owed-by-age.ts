import { agedBalances } from '../pricing/aged-balances.ts';
import { readIssued } from '../storage/issued.ts';
import type { OpenBook } from '../storage/open-book.ts';
import { readPayments } from '../storage/record-payment.ts';

/**
 * Who owes what, by age.
 * @param book the open book
 * @param day as of this day
 * @param payer the id of the only payer asked for, or null for all
 */
export function owedByAge(book: OpenBook, day: string, payer: string | null) {
  const invoices = readIssued(book).map((each) => each.invoice);
  return agedBalances(invoices, readPayments(book), day).filter((each) => payer === null || each.payerId === payer);
}
