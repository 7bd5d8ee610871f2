import { Problem } from '../problem.ts';
import type { Job } from '../records/job.ts';
import type { Payer } from '../records/payer.ts';
import type { OpenBook } from '../storage/open-book.ts';

/**
 * Who pays for a job.
 * @param book the open book
 * @param job the job
 * @throws Problem when the job names no payer that the book knows
 */
export function payerOfJob(book: OpenBook, job: Job): Payer {
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
