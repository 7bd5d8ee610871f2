import { describe, expect, test } from 'vitest';
import { priceJob } from '../../src/pricing/price-job.ts';
import { lineAmountMinorUnits } from '../../src/quantities/decimal.ts';
import { type Job, type JobInput, job } from '../../src/records/job.ts';
import { rateCard } from '../../src/records/rate-card.ts';
import { trip } from '../../src/records/trip.ts';
import { soundFacts, soundJob } from '../../src/rules/sound-job.ts';

const { book } = soundFacts(soundJob);
const rates = rateCard.parse({
  schema: 'keyout-rates-1',
  flatRates: [{ visit: 'new fit', priceMinorUnits: 10_000, includedMinutes: 60 }],
  hourly: [{ priceMinorUnits: 6000, stepMinutes: 15, rounding: 'up' }],
  waiting: [{ freeMinutes: 15, priceMinorUnits: 6000 }],
  travel: [{ pricePerDistanceMinorUnits: '72.5', unit: 'mi' }],
  extras: [{ id: 'second-lead', name: 'Second lead', priceMinorUnits: 2000, includedMinutes: 30 }],
});

function jobOf(id: string, labour: JobInput['labour']): Job {
  return job.parse({
    schema: 'keyout-job-1',
    id: `2026-01-05-${id}`,
    day: '2026-01-05',
    identity: { visit: 'new fit' },
    labour,
  });
}
const priced = (
  record: Job,
  day = trip.parse({
    schema: 'keyout-trip-1',
    day: '2026-01-05',
    distance: '0',
    unit: 'mi',
    travelMinutes: 0,
    jobs: [{ job: record.id }],
  }),
  tripJobs = [record],
) =>
  priceJob({ job: record, trip: day, tripJobs, rates, book, orderOnDay: 1 }).map((line) => ({
    kind: line.kind,
    amount: lineAmountMinorUnits(line.quantity, line.unitPriceMinorUnits, line.baseQuantity),
  }));

describe('a job priced by hand', () => {
  test.each<[string, JobInput['labour'], { kind: string; amount: number }[]]>([
    [
      'sixty minutes are inside the flat rate',
      { start: '2026-01-05T08:00', end: '2026-01-05T09:00' },
      [{ kind: 'flat rate', amount: 10_000 }],
    ],
    [
      'one minute beyond it is charged as a quarter of an hour',
      { start: '2026-01-05T08:00', end: '2026-01-05T09:01' },
      [
        { kind: 'flat rate', amount: 10_000 },
        { kind: 'labour', amount: 1500 },
      ],
    ],
    [
      'an extra brings its own minutes',
      { start: '2026-01-05T08:00', end: '2026-01-05T09:30', extras: [{ extra: 'second-lead' }] },
      [
        { kind: 'flat rate', amount: 10_000 },
        { kind: 'extra', amount: 2000 },
      ],
    ],
    ['waiting inside the free minutes is free', { waitingMinutes: 15 }, [{ kind: 'flat rate', amount: 10_000 }]],
    [
      'waiting beyond them is charged by the step',
      { waitingMinutes: 31 },
      [
        { kind: 'flat rate', amount: 10_000 },
        { kind: 'waiting', amount: 3000 },
      ],
    ],
  ])('%s', (_, labour, expected) => {
    expect(priced(jobOf('AAAA', labour))).toEqual(expected);
  });

  test('three vehicles share a trip of 100 miles at 72.5 cents to the cent', () => {
    const jobs = ['AAAA', 'BBBB', 'CCCC'].map((id) => jobOf(id, {}));
    const day = trip.parse({
      schema: 'keyout-trip-1',
      day: '2026-01-05',
      distance: '100',
      unit: 'mi',
      travelMinutes: 0,
      jobs: jobs.map(({ id }) => ({ job: id })),
    });
    const shares = jobs.map((each) => priced(each, day, jobs).find((line) => line.kind === 'travel distance')?.amount);
    expect(shares).toEqual([2417, 2417, 2416]);
  });

  test('a trip in kilometres is not priced by the mile', () => {
    const record = jobOf('AAAA', {});
    const day = trip.parse({
      schema: 'keyout-trip-1',
      day: '2026-01-05',
      distance: '100',
      unit: 'km',
      travelMinutes: 0,
      jobs: [{ job: record.id }],
    });
    expect(() => priced(record, day)).toThrow(/The trip is in km, the travel rate in mi/);
  });
});
