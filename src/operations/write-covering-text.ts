import { existsSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { coveringHandoverView, coveringInvoiceView } from '../documents/covering-view.ts';
import type { IssuedInvoice } from '../records/issued-invoice.ts';
import type { Job } from '../records/job.ts';
import type { JobFacts } from '../rules/job-facts.ts';
import type { OpenBook } from '../storage/open-book.ts';
import { readTemplates } from '../storage/templates.ts';
import { writeAtomically } from '../storage/write-atomically.ts';
import { fillText } from '../typesetting/markup/fill-text.ts';

function write(book: OpenBook, templateName: string, view: object, place: string): string {
  const templates = readTemplates(book);
  const text = fillText(templates.text(templateName), templates.path(templateName), view);
  const file = path.join(book.folder, place);
  if (!existsSync(file) || readFileSync(file, 'utf8') !== text) writeAtomically(file, text);
  return place;
}

/** Where the text that goes with a job's handover sheet lies, inside the book. */
export function handoverCoverPlace(job: Pick<Job, 'id' | 'day'>): string {
  return path.join('out', job.day, `${job.id}-handover.txt`);
}

/**
 * Writes the short text that goes with a handover sheet, beside it.
 * @param book the open book
 * @param facts the job with what is known around it
 * @returns the text's path inside the book
 */
export function writeHandoverCover(book: OpenBook, facts: JobFacts): string {
  return write(book, 'covering-handover.txt', coveringHandoverView(facts), handoverCoverPlace(facts.job));
}

/**
 * Writes the short text that goes with an issued document.
 * @param book the open book
 * @param invoice the numbered invoice or credit note
 * @returns the text's path inside the book
 */
export function writeInvoiceCover(book: OpenBook, invoice: IssuedInvoice): string {
  const place = path.join('out', invoice.issued, `${invoice.number}.txt`);
  return write(book, 'covering-invoice.txt', coveringInvoiceView(invoice, book.book), place);
}
