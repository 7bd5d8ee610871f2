import type { Job } from '../records/job.ts';
import { jobsOnDay, readJob } from '../storage/jobs.ts';
import type { OpenBook } from '../storage/open-book.ts';

/**
 * The jobs named on the command line, or all jobs of a day when none is named.
 * @param book the open book
 * @param names job ids
 * @param day the day to take when no name is given
 */
export async function chosenJobs(book: OpenBook, names: readonly string[], day: string): Promise<readonly Job[]> {
  if (names.length === 0) return jobsOnDay(book, day);
  const jobs: Job[] = [];
  for (const name of names) jobs.push(await readJob(book, name));
  return jobs;
}
