import type { DrawFiles } from '../storage/change-book.ts';
import type { OpenBook } from '../storage/open-book.ts';

/**
 * What draws the files beside a document's record.
 * @param book the open book
 */
export function drawFiles(book: OpenBook): DrawFiles {
  return async (numbered) => {
    const { renderInvoice } = await import('./render-invoice.ts');
    return [{ name: 'invoice.pdf', content: await renderInvoice(book, numbered) }];
  };
}
