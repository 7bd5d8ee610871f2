import { jobsOnDay } from '../storage/jobs.ts';
import type { OpenBook } from '../storage/open-book.ts';
import { readTrip, writeTrip } from '../storage/trips.ts';
import type { World } from './command.ts';

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
