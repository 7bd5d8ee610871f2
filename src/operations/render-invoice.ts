import { invoiceView } from '../documents/invoice-view.ts';
import { hybridInvoice } from '../exports/structured/hybrid-invoice.ts';
import type { IssuedInvoice } from '../records/issued-invoice.ts';
import { sha256 } from '../storage/digest.ts';
import { readFonts } from '../storage/fonts.ts';
import type { OpenBook } from '../storage/open-book.ts';
import { readTemplates } from '../storage/templates.ts';
import { typeset } from '../typesetting/typeset.ts';
import { documentImages } from './document-images.ts';

/**
 * An invoice or credit note on paper: PDF bytes and the text of its pages.
 * @param open the open book
 * @param invoice the numbered document
 */
export async function typesetInvoice(open: OpenBook, invoice: IssuedInvoice) {
  const templates = await readTemplates(open);
  const images = await documentImages(open, null);
  const view = invoiceView({ invoice, book: open.book, imageNames: Object.keys(images) });
  return typeset({
    template: templates.text('invoice'),
    templateName: templates.path('invoice'),
    partials: templates.partials,
    view,
    fonts: await readFonts(),
    images,
    language: invoice.language,
    title: `${view.heading} ${view.number}`,
    author: invoice.seller.name,
    created: invoice.issued,
    identity: sha256(JSON.stringify(invoice)),
    ...hybridInvoice(invoice),
  });
}

/**
 * The PDF of an invoice or credit note.
 * @param open the open book
 * @param invoice the numbered document
 */
export async function renderInvoice(open: OpenBook, invoice: IssuedInvoice): Promise<Uint8Array> {
  return (await typesetInvoice(open, invoice)).pdf;
}
