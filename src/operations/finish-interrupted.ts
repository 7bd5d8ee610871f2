import { changeBook } from '../storage/change-book.ts';
import { unfinishedNumbers } from '../storage/complete-unfinished.ts';
import type { OpenBook } from '../storage/open-book.ts';
import { drawFiles } from './draw-files.ts';

/**
 * Finishes a document that a stop left between its number and the ledger, if there is one.
 * @param book the open book
 * @param now this moment, UTC
 */
export async function finishInterrupted(book: OpenBook, now: string): Promise<void> {
  if (unfinishedNumbers(book).length > 0) await changeBook(book, { now, draw: drawFiles(book) }, async () => undefined);
}
