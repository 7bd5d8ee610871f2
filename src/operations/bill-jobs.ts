import type { World } from '../commands/command.ts';
import { tellLacking } from '../commands/tell-lacking.ts';
import { effectiveRates } from '../pricing/effective-rates.ts';
import { orderOnDay } from '../pricing/flat-rate.ts';
import { makeInvoice } from '../pricing/make-invoice.ts';
import { priceJob } from '../pricing/price-job.ts';
import { Problem } from '../problem.ts';
import type { IssuedInvoice } from '../records/issued-invoice.ts';
import type { Job } from '../records/job.ts';
import type { Payer } from '../records/payer.ts';
import { changeBook } from '../storage/change-book.ts';
import { unfinishedNumbers } from '../storage/complete-unfinished.ts';
import { issueDocument } from '../storage/issue-document.ts';
import { type IssuedDocument, issuedForJob } from '../storage/issued.ts';
import { jobsOnDay, readJob } from '../storage/jobs.ts';
import type { OpenBook } from '../storage/open-book.ts';
import { drawFiles } from './draw-files.ts';
import { tripOfJob } from './trip-of-job.ts';
import { writeInvoiceCover } from './write-covering-text.ts';

function payerOf(book: OpenBook, job: Job): Payer {
  const id = job.identity.payer;
  const payer = id === undefined ? undefined : book.payers.get(id);
  if (payer === undefined)
    throw new Problem(
      `The job names no payer${id === undefined ? '' : ` that the book knows: "${id}"`}.`,
      `${job.id}, identity.payer`,
      'Name one of the files in payers/.',
    );
  return payer;
}

async function pricedLines(book: OpenBook, job: Job, payer: Payer) {
  const trip = tripOfJob(book, job);
  const tripJobs: Job[] = [];
  for (const each of trip?.jobs ?? []) tripJobs.push(await readJob(book, each.job));
  const rates = effectiveRates(book.rates, payer);
  const samePayer = (await jobsOnDay(book, job.day)).filter((each) => each.identity.payer === payer.id);
  return priceJob({
    job,
    trip,
    tripJobs,
    rates,
    book: book.book,
    language: payer.language ?? book.book.language,
    orderOnDay: orderOnDay(job, samePayer, rates),
  });
}

/** Jobs that go on one invoice: one a vehicle, or all of one payer. */
export function invoiceGroups(
  book: OpenBook,
  jobs: readonly Job[],
  per: 'vehicle' | 'payer' | null,
): readonly (readonly Job[])[] {
  const groups = new Map<string, Job[]>();
  for (const job of jobs) {
    const payer = payerOf(book, job);
    const key = (per ?? payer.invoicePer) === 'payer' ? `payer ${payer.id}` : `job ${job.id}`;
    groups.set(key, [...(groups.get(key) ?? []), job]);
  }
  return [...groups.values()];
}

/**
 * The invoice for some jobs of one payer, not yet numbered.
 * @param book the open book
 * @param jobs jobs of one payer
 * @param issued the day of issue
 * @throws Problem when a job names no known payer
 */
export async function draftInvoice(book: OpenBook, jobs: readonly Job[], issued: string): Promise<IssuedInvoice> {
  const first = jobs[0];
  if (first === undefined) throw new Problem('There is nothing to bill.', 'keyout bill', 'Name a job.', 2);
  const payer = payerOf(book, first);
  const rates = effectiveRates(book.rates, payer);
  const priced = [];
  for (const job of jobs) priced.push({ job, lines: await pricedLines(book, job, payer) });
  return makeInvoice({
    number: 'draft',
    issued,
    book: book.book,
    payer,
    jobs: priced,
    documentDiscountPercent: rates.documentDiscountPercent,
    documentDiscountBecause: rates.documentDiscountBecause,
  });
}

/**
 * Issues one invoice: number, record, files and ledger entry, all or nothing; and its covering text.
 * A job already billed is left out: whether it is, is looked up while no other process can issue.
 * @param book the open book
 * @param jobs jobs of one payer
 * @param issued the day of issue
 * @param world the outside world
 * @returns the invoice, or null when all of the jobs are billed already
 */
async function billJobs(
  book: OpenBook,
  jobs: readonly Job[],
  issued: string,
  world: World,
): Promise<IssuedDocument | null> {
  return changeBook(book, { now: world.now(), draw: drawFiles(book) }, async (changing) => {
    const unbilled = jobs.filter((job) => issuedForJob(book, job.id) === null);
    if (unbilled.length === 0) return null;
    const draft = await draftInvoice(book, unbilled, issued);
    const document = await issueDocument(changing, { draft, van: world.van ?? null });
    tellLacking(document.invoice, world);
    writeInvoiceCover(book, document.invoice);
    return document;
  });
}

/** What came of billing several groups of jobs: documents, jobs that another process billed meanwhile, and what stopped a group. */
export type Billed = {
  readonly documents: readonly IssuedDocument[];
  readonly meanwhile: readonly (readonly Job[])[];
  readonly stopped: readonly { readonly jobs: readonly Job[]; readonly problem: Problem }[];
};

/**
 * Issues an invoice for each group of jobs; what stops one group does not stop the others.
 * @param book the open book
 * @param groups jobs that go on one invoice each
 * @param issued the day of issue
 * @param world the outside world
 */
export async function billGroups(
  book: OpenBook,
  groups: readonly (readonly Job[])[],
  issued: string,
  world: World,
): Promise<Billed> {
  const documents: IssuedDocument[] = [];
  const meanwhile: (readonly Job[])[] = [];
  const stopped: { jobs: readonly Job[]; problem: Problem }[] = [];
  for (const jobs of groups) {
    try {
      const document = await billJobs(book, jobs, issued, world);
      if (document === null) meanwhile.push(jobs);
      else documents.push(document);
    } catch (error) {
      // a book that cannot be written or is damaged stops every group
      if (!(error instanceof Problem) || error.exitCode === 1) throw error;
      stopped.push({ jobs, problem: error });
    }
  }
  return { documents, meanwhile, stopped };
}

/**
 * Tells what stopped some groups of jobs, and ends with the last of it; does nothing when all went well.
 * @param stopped groups and what stopped each
 * @param world the outside world
 * @throws Problem the last of those told
 */
export function failStopped(stopped: Billed['stopped'], world: World): void {
  for (const { jobs, problem } of stopped.slice(0, -1))
    world.tell(
      `${jobs.map((job) => job.id).join(', ')}: ${problem.what}\n  where: ${problem.where}\n  to do: ${problem.whatToDo}`,
    );
  const last = stopped.at(-1);
  if (last !== undefined) throw last.problem;
}

/**
 * Finishes a document that a stop left between its number and the ledger, if there is one.
 * @param book the open book
 * @param world the outside world
 */
export async function finishInterrupted(book: OpenBook, world: World): Promise<void> {
  if (unfinishedNumbers(book).length > 0)
    await changeBook(book, { now: world.now(), draw: drawFiles(book) }, async () => undefined);
}
