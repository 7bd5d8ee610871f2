import path from 'node:path';
import type { World } from '../commands/command.ts';
import { Problem } from '../problem.ts';
import type { Job } from '../records/job.ts';
import type { Trip } from '../records/trip.ts';
import { issuedForJob } from '../storage/issued.ts';
import { jobsOnDay } from '../storage/jobs.ts';
import type { OpenBook } from '../storage/open-book.ts';
import { readTrip, writeTrip } from '../storage/trips.ts';

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

/**
 * Asks for a day's travel where jobs belong to a trip that is not recorded; does nothing without a terminal.
 * @param book the open book
 * @param day the day
 * @param world the outside world
 */
export async function askForTrip(book: OpenBook, day: string, world: World): Promise<void> {
  if (!world.mayAsk || readTrip(book, day) !== null) return;
  const jobs = jobsOnDay(book, day).filter((job) => job.trip === day);
  if (jobs.length === 0) return;
  const { askFor } = await import('../prompts/ask-for.ts');
  const { askTrip } = await import('../prompts/ask-trip.ts');
  const trip = await askTrip(
    askFor(world.plain),
    book.book,
    day,
    jobs.map((job) => job.id),
  );
  if (trip !== null) writeTrip(book, trip);
}

/** Jobs of a trip that are billed already: their shares are fixed, so no job may join any more. */
export function billedOfTrip(book: OpenBook, trip: Trip): readonly string[] {
  return trip.jobs.map((each) => each.job).filter((id) => issuedForJob(book, id) !== null);
}
