import type { Trip } from '../records/trip.ts';
import { issuedForJob } from '../storage/issued.ts';
import type { OpenBook } from '../storage/open-book.ts';

/** Jobs of a trip that are billed already: their shares are fixed, so no job may join any more. */
export function billedOfTrip(book: OpenBook, trip: Trip): readonly string[] {
  return trip.jobs.map((each) => each.job).filter((id) => issuedForJob(book, id) !== null);
}
