import { Problem } from '../problem.ts';
import type { IssuedInvoice } from '../records/issued-invoice.ts';
import type { Job } from '../records/job.ts';
import { changeBook } from '../storage/change-book.ts';
import { issueDocument } from '../storage/issue-document.ts';
import { type IssuedDocument, issuedForJob } from '../storage/issued.ts';
import type { OpenBook } from '../storage/open-book.ts';
import { draftInvoice } from './draft-invoice.ts';
import { drawFiles } from './draw-files.ts';
import { lackingOf } from './lacking-of.ts';
import type { Moment } from './moment.ts';
import { writeInvoiceCover } from './write-covering-text.ts';

/**
 * Issues one invoice: number, record, files and ledger entry, all or nothing; and its covering text.
 * A job already billed is left out: whether it is, is looked up while no other process can issue.
 * @returns the invoice, or null when all of the jobs are billed already
 */
async function billJobs(
  book: OpenBook,
  jobs: readonly Job[],
  moment: Moment,
  day: string,
): Promise<IssuedDocument | null> {
  return changeBook(book, { now: moment.now, draw: drawFiles(book) }, async (changing) => {
    const unbilled = jobs.filter((job) => issuedForJob(book, job.id) === null);
    if (unbilled.length === 0) return null;
    const draft = await draftInvoice(book, unbilled, day);
    const document = await issueDocument(changing, { draft, van: moment.van });
    writeInvoiceCover(book, document.invoice);
    return document;
  });
}

/** What came of billing several groups of jobs: documents, jobs that another process billed meanwhile, and what stopped a group. */
export type Billed = {
  readonly documents: readonly IssuedDocument[];
  readonly meanwhile: readonly (readonly Job[])[];
  readonly stopped: readonly { readonly jobs: readonly Job[]; readonly problem: Problem }[];
  /** one sentence for each document that is issued without its structured file */
  readonly lacking: readonly string[];
};

/**
 * Issues an invoice for each group of jobs; what stops one group does not stop the others.
 * @param book the open book
 * @param groups jobs that go on one invoice each
 * @param moment when, and in whose number series
 * @param day the day of issue
 */
export async function billGroups(
  book: OpenBook,
  groups: readonly (readonly Job[])[],
  moment: Moment,
  day: string,
): Promise<Billed> {
  const documents: IssuedDocument[] = [];
  const meanwhile: (readonly Job[])[] = [];
  const stopped: { jobs: readonly Job[]; problem: Problem }[] = [];
  for (const jobs of groups) {
    try {
      const document = await billJobs(book, jobs, moment, day);
      if (document === null) meanwhile.push(jobs);
      else documents.push(document);
    } catch (error) {
      // a book that cannot be written or is damaged stops every group
      if (!(error instanceof Problem) || error.exitCode === 1) throw error;
      stopped.push({ jobs, problem: error });
    }
  }
  const lacking = documents.flatMap(({ invoice }: { invoice: IssuedInvoice }) => lackingOf(invoice) ?? []);
  return { documents, meanwhile, stopped, lacking };
}
