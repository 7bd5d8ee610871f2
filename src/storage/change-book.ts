import path from 'node:path';
import type { ChangingBook, DrawFiles } from './changing-book.ts';
import { completeUnfinished } from './complete-unfinished.ts';
import { fileProblem } from './file-problem.ts';
import type { OpenBook } from './open-book.ts';
import { sweepTemporary } from './sweep-temporary.ts';
import { withLockHeld } from './with-lock.ts';

/**
 * Looks something up and acts on it with no other writer in between; makes good first what an earlier stop left undone.
 * @param open the open book
 * @param by the moment (UTC) and what draws a document's files
 * @param action what to do
 * @throws Problem when another process holds the book for a minute
 */
export async function changeBook<Result>(
  open: OpenBook,
  by: { readonly now: string; readonly draw: DrawFiles },
  action: (changing: ChangingBook) => Promise<Result>,
): Promise<Result> {
  const lock = path.join(open.folder, 'book.lock');
  try {
    return await withLockHeld(lock, async () => {
      await completeUnfinished(open, by.now, by.draw);
      sweepTemporary(open);
      return action({ open, ...by });
    });
  } catch (error) {
    throw fileProblem(error, lock);
  }
}
