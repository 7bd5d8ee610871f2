import type { Book } from '../records/book.ts';
import { type Trip, trip as tripRecord } from '../records/trip.ts';
import { amountOf, amountOrNothing, numberOf, numberOrNothing, something, whole } from './answers.ts';
import type { Ask } from './question.ts';

const given = (text: string) => something(text) ?? numberOrNothing(text);

/**
 * A day's travel, shared by the day's jobs.
 * @param ask how a prompt reaches a person
 * @param book currency and units
 * @param day the day
 * @param jobs names of the jobs that share it
 * @returns the trip, or null when it shall be recorded later
 */
export async function askTrip(
  ask: Ask,
  book: Pick<Book, 'currency' | 'units'>,
  day: string,
  jobs: readonly string[],
): Promise<Trip | null> {
  const unit = book.units.distance;
  const distance = await ask.text(`The whole trip of ${day}, ${unit} (empty: later)`, '', numberOrNothing);
  if (distance === '') return null;
  const travelMinutes = Number(await ask.text('Minutes on the road', '', (text) => something(text) ?? whole(text)));
  const tolls = await ask.text(`Tolls, ${book.currency}`, '', amountOrNothing(book.currency));
  const parking = await ask.text(`Parking, ${book.currency}`, '', amountOrNothing(book.currency));
  const shareBy = await ask.choose('Shared over its jobs', ['equally', 'time', 'distance'], 'equally');
  const shares: Trip['jobs'] = [];
  for (const job of jobs) {
    shares.push(
      shareBy === 'distance'
        ? { job, distance: String(numberOf(await ask.text(`${job}: its distance from your base, ${unit}`, '', given))) }
        : { job },
    );
  }
  return tripRecord.parse({
    schema: 'keyout-trip-1',
    day,
    distance: String(numberOf(distance)),
    unit,
    travelMinutes,
    ...(tolls === '' ? {} : { tollsMinorUnits: amountOf(tolls, book.currency) ?? 0 }),
    ...(parking === '' ? {} : { parkingMinorUnits: amountOf(parking, book.currency) ?? 0 }),
    shareBy,
    jobs: shares,
  });
}

/** One more job of a trip that is recorded already. */
export async function joinTrip(ask: Ask, trip: Trip, job: string): Promise<Trip> {
  if (trip.jobs.some((each) => each.job === job)) return trip;
  const distance =
    trip.shareBy === 'distance'
      ? String(numberOf(await ask.text(`${job}: its distance from your base, ${trip.unit}`, '', given)))
      : null;
  return { ...trip, jobs: [...trip.jobs, { job, ...(distance === null ? {} : { distance }) }] };
}
