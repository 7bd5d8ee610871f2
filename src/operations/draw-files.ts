import { structuredInvoice } from '../exports/structured/structured-invoice.ts';
import type { DrawFiles } from '../storage/changing-book.ts';
import type { OpenBook } from '../storage/open-book.ts';

/**
 * What draws the files beside a document's record: the PDF, and the structured invoice where the data allow one.
 * @param book the open book
 */
export function drawFiles(book: OpenBook): DrawFiles {
  return async (numbered) => {
    const { renderInvoice } = await import('./render-invoice.ts');
    const structured = structuredInvoice(numbered);
    return [
      { name: 'invoice.pdf', content: await renderInvoice(book, numbered) },
      ...('xml' in structured ? [{ name: 'invoice.xml', content: structured.xml }] : []),
    ];
  };
}
