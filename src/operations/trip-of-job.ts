import path from 'node:path';
import { Problem } from '../problem.ts';
import type { Job } from '../records/job.ts';
import type { Trip } from '../records/trip.ts';
import type { OpenBook } from '../storage/open-book.ts';
import { readTrip } from '../storage/trips.ts';

/**
 * The recorded trip a job belongs to, or null when it has no travel; miles are never forgotten in silence.
 * @param book the open book
 * @param job the job
 * @throws Problem when the job belongs to a trip that is not recorded, or that does not list it
 */
export function tripOfJob(book: OpenBook, job: Job): Trip | null {
  if (job.trip === undefined) return null;
  const trip = readTrip(book, job.trip);
  const file = path.join(book.folder, 'trips', `${job.trip}.json`);
  if (trip === null)
    throw new Problem(
      `The trip of ${job.trip} that ${job.id} belongs to is not recorded, so its travel cannot be billed.`,
      file,
      `Run \`keyout day ${job.trip}\` on a terminal, which asks for it, or write the file; or take "trip" out of the job.`,
    );
  if (!trip.jobs.some((each) => each.job === job.id))
    throw new Problem(
      `The trip of ${job.trip} does not list ${job.id}.`,
      `${file}, jobs`,
      `Add {"job": "${job.id}"} to it, or take "trip" out of the job.`,
    );
  return trip;
}
