import type { Damage } from '../storage/damage.ts';
import { readLedger } from '../storage/ledger.ts';
import { readHead } from '../storage/ledger-head.ts';
import type { OpenBook } from '../storage/open-book.ts';
import { verifyBook } from '../storage/verify-book.ts';

/** What a book's verification found. */
export type VerifiedBook = {
  readonly damage: readonly Damage[];
  /** lines of the ledger of a whole book */
  readonly lines: number;
  /** the last line and its digest: who can write in the book can also make a new chain, only a digest kept elsewhere shows that */
  readonly seal: { readonly line: number; readonly digest: string } | null;
};

/** Verifies a whole book: nothing missing, nothing altered, no number skipped. */
export function verifyWholeBook(book: OpenBook): VerifiedBook {
  const damage = verifyBook(book);
  if (damage.length > 0) return { damage, lines: 0, seal: null };
  const head = readHead(book);
  return {
    damage,
    lines: readLedger(book).length,
    seal: head === null ? null : { line: head.lines, digest: head.last },
  };
}
