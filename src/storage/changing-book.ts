import type { IssuedInvoice } from '../records/issued-invoice.ts';
import type { OpenBook } from './open-book.ts';

/** Draws the files that stand beside a document's record: name and content. */
export type DrawFiles = (
  numbered: IssuedInvoice,
) => Promise<readonly { readonly name: string; readonly content: string | Uint8Array }[]>;

/** A book that no other process writes issued documents or payments into, until the change is done. */
export type ChangingBook = { readonly open: OpenBook; readonly now: string; readonly draw: DrawFiles };
