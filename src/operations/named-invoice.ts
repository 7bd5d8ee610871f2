import { Problem } from '../problem.ts';
import { findIssued, type IssuedDocument } from '../storage/issued.ts';
import type { OpenBook } from '../storage/open-book.ts';

/**
 * The invoice that a number names.
 * @param book the open book
 * @param number what was typed
 * @param where the command, for the message
 * @throws Problem when there is no such invoice
 */
export function namedInvoice(book: OpenBook, number: string, where: string): IssuedDocument {
  const found = findIssued(book, number);
  if (found === null)
    throw new Problem(`No invoice ${number} was issued.`, where, '`keyout owed` lists the open ones.', 2);
  if (found.invoice.type !== 'invoice')
    throw new Problem(
      `${found.number} is a credit note.`,
      where,
      `Name the invoice it corrects: ${found.invoice.corrects?.number ?? ''}.`,
      2,
    );
  return found;
}
