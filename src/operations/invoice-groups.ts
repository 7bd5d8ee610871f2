import type { Job } from '../records/job.ts';
import type { OpenBook } from '../storage/open-book.ts';
import { payerOfJob } from './payer-of-job.ts';

/** Jobs that go on one invoice: one a vehicle, or all of one payer. */
export function invoiceGroups(
  book: OpenBook,
  jobs: readonly Job[],
  per: 'vehicle' | 'payer' | null,
): readonly (readonly Job[])[] {
  const groups = new Map<string, Job[]>();
  for (const job of jobs) {
    const payer = payerOfJob(book, job);
    const key = (per ?? payer.invoicePer) === 'payer' ? `payer ${payer.id}` : `job ${job.id}`;
    groups.set(key, [...(groups.get(key) ?? []), job]);
  }
  return [...groups.values()];
}
