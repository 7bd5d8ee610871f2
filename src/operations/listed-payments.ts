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
