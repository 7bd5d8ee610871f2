import type { Book } from '../records/book.ts';
import type { IssuedInvoice } from '../records/issued-invoice.ts';
import type { JobFacts } from '../rules/job-facts.ts';
import { writingFor } from '../words/writing.ts';
import { handoverLanguage } from './handover-view.ts';
import { summarySentences } from './summary-sentences.ts';
import { vehicleInWords } from './wire-words.ts';

/** A short text that goes with a document by mail or message: strings and lists only. */
export type CoveringView = {
  readonly subject: string;
  readonly greeting: string;
  readonly lines: readonly { readonly text: string }[];
  readonly regards: string;
  readonly sender: readonly { readonly text: string }[];
};

const given = (words: readonly (string | undefined)[]) =>
  words.filter((word) => word !== undefined && word !== '').map((text) => ({ text: String(text) }));

/** The text that goes with a handover sheet. */
export function coveringHandoverView(facts: JobFacts): CoveringView {
  const { job, book, profile, evidence } = facts;
  const writing = writingFor(book, handoverLanguage(facts), book.currency);
  const { cover } = writing.sentences;
  const { name, installer, phone, email } = book.business;
  return {
    subject: cover.handoverSubject(vehicleInWords(job.vehicle, writing), job.id),
    greeting: cover.greeting(job.identity.customer?.contact ?? null),
    lines: given([
      cover.handoverAttached(writing.date(job.day)),
      summarySentences(job, profile, evidence, writing).join(' '),
    ]),
    regards: cover.regards,
    sender: given([job.identity.installer ?? installer, name, phone, email]),
  };
}

/** The text that goes with an invoice or credit note. */
export function coveringInvoiceView(invoice: IssuedInvoice, book: Book): CoveringView {
  const writing = writingFor(book, invoice.language, invoice.currency);
  const { cover } = writing.sentences;
  const amount = writing.money(invoice.totals.dueMinorUnits);
  const credit = invoice.type === 'credit note';
  const attached = credit
    ? cover.creditAttached(invoice.number, amount, invoice.corrects?.number ?? '')
    : cover.invoiceAttached(invoice.number, amount, writing.date(invoice.due));
  return {
    subject: credit ? cover.creditSubject(invoice.number) : cover.invoiceSubject(invoice.number),
    greeting: cover.greeting(null),
    lines: given([
      attached,
      ...invoice.vehicles.map((vehicle) => `${vehicle.job}: ${vehicle.text}`),
      invoice.purchaseOrder === undefined ? undefined : cover.order(invoice.purchaseOrder),
      credit || invoice.totals.dueMinorUnits <= 0 ? undefined : cover.reference(invoice.payment.reference),
    ]),
    regards: cover.regards,
    sender: given([invoice.seller.name, invoice.seller.phone, invoice.seller.email]),
  };
}
