import path from 'node:path';
import { readJob } from '../storage/jobs.ts';
import type { OpenBook } from '../storage/open-book.ts';
import { readTemplates } from '../storage/templates.ts';
import { writeAtomically } from '../storage/write-atomically.ts';
import { draftInvoice } from './draft-invoice.ts';
import { examineJob } from './examine-job.ts';
import { renderHandover } from './render-handover.ts';
import { typesetInvoice } from './render-invoice.ts';

/** A document printed from the templates as they are now. */
export type PrintedPreview = { readonly template: string; readonly file: string; readonly pages: number };

/**
 * Prints a job's sheet or draft invoice into the book's out folder, from the templates as they are now.
 * @param book the open book
 * @param kind which document
 * @param id the job
 * @param today the day of the draft
 * @throws Problem naming the line of a template's mistake
 */
export async function printPreview(
  book: OpenBook,
  kind: 'handover' | 'invoice',
  id: string,
  today: string,
): Promise<PrintedPreview> {
  const job = readJob(book, id);
  const { pdf, pages } =
    kind === 'handover'
      ? await renderHandover(book, await examineJob(book, job))
      : await typesetInvoice(book, await draftInvoice(book, [job], today));
  const file = path.join('out', 'preview', `${kind}.pdf`);
  writeAtomically(path.join(book.folder, file), pdf);
  return { template: readTemplates(book).path(kind), file, pages: pages.length };
}
