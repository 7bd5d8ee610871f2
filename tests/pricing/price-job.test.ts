import { describe, expect, test } from 'vitest';
import { labourLines } from '../../src/pricing/labour-lines.ts';
import { partLines } from '../../src/pricing/part-lines.ts';
import { settingOf } from '../../src/pricing/setting.ts';
import { workMinutes } from '../../src/pricing/work-minutes.ts';
import { lineAmountMinorUnits } from '../../src/quantities/decimal.ts';
import { type Job, type JobInput, job } from '../../src/records/job.ts';
import { rateCard } from '../../src/records/rate-card.ts';
import { trip } from '../../src/records/trip.ts';
import { soundFacts, soundJob } from '../../src/rules/sound-job.ts';
import { priceJob, wordingIn } from './worded.ts';

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

  test('a trip by distance or by time is shared in proportion, and its shares sum to what it cost', () => {
    const jobs = [
      jobOf('AAAA', { start: '2026-01-05T08:00', end: '2026-01-05T08:30' }),
      jobOf('BBBB', { start: '2026-01-05T09:00', end: '2026-01-05T10:00' }),
      jobOf('CCCC', { start: '2026-01-05T22:30', end: '2026-01-06T00:00' }),
    ];
    const shares = (shareBy: 'distance' | 'time') => {
      const day = trip.parse({
        schema: 'keyout-trip-1',
        day: '2026-01-05',
        distance: '100',
        unit: 'mi',
        travelMinutes: 0,
        tollsMinorUnits: 1000,
        shareBy,
        jobs: jobs.map(({ id }, place) => ({ job: id, distance: ['10', '20', '33.5'][place] })),
      });
      return jobs.map((each) => priced(each, day, jobs).find((line) => line.kind === 'travel distance')?.amount);
    };
    // 7250 by 10 : 20 : 33.5 = 1141.7, 2283.5, 3824.8; by 30 : 60 : 90 minutes = 1208.3, 2416.7, 3625
    expect(shares('distance')).toEqual([1142, 2283, 3825]);
    expect(shares('time')).toEqual([1208, 2417, 3625]);
  });

  test('a trip by time or by distance waits until every job has its own', () => {
    const jobs = [jobOf('AAAA', { start: '2026-01-05T08:00', end: '2026-01-05T08:30' }), jobOf('BBBB', {})];
    const day = (shareBy: string) =>
      trip.parse({
        schema: 'keyout-trip-1',
        day: '2026-01-05',
        distance: '100',
        unit: 'mi',
        travelMinutes: 0,
        shareBy,
        jobs: [{ job: '2026-01-05-AAAA', distance: '5' }, { job: '2026-01-05-BBBB' }],
      });
    const [first = jobOf('AAAA', {})] = jobs;
    expect(() => priced(first, day('time'), jobs)).toThrow(/2026-01-05-BBBB has no times yet.*jobs\[2\]/);
    expect(() => priced(first, day('distance'), jobs)).toThrow(/2026-01-05-BBBB has none.*jobs\[2\]\.distance/);
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

describe('parts', () => {
  const partsOf = (parts: JobInput['parts']) =>
    partLines(
      job.parse({ schema: 'keyout-job-1', id: '2026-01-05-AAAA', day: '2026-01-05', parts }),
      rateCard.parse({
        schema: 'keyout-rates-1',
        hourly: [{ priceMinorUnits: 6000 }],
        parts: [{ id: 'wire', name: 'Wire', priceMinorUnits: '38.5' }],
        partsMarkUpPercent: '15',
      }),
      settingOf(book, wordingIn('en')),
    ).map((line) => [line.unitPriceMinorUnits, lineAmountMinorUnits(line.quantity, line.unitPriceMinorUnits)]);

  test('cost and mark-up keep their fractions of a cent until the line is summed', () => {
    expect(partsOf([{ what: 'Sleeve', quantity: '100', unitCostMinorUnits: 3 }])).toEqual([['3.45', 345]]);
    expect(partsOf([{ what: 'Wire', quantity: '3', part: 'wire' }])).toEqual([['38.5', 116]]);
  });

  test('a part that cost nothing is free, one of which nothing is said is not', () => {
    expect(partsOf([{ what: 'Sleeve', quantity: '1', unitCostMinorUnits: 0 }])).toEqual([['0', 0]]);
    expect(() => partsOf([{ what: 'Sleeve', quantity: '1' }])).toThrow(
      /2026-01-05-AAAA, parts\[1\]\.unitCostMinorUnits/,
    );
    expect(() => partsOf([{ what: 'Sleeve', quantity: '1', part: 'sleeve' }])).toThrow(/no part "sleeve"/);
    expect(partsOf([{ what: 'Sleeve', quantity: '1', part: 'sleeve', unitCostMinorUnits: 100 }])).toEqual([
      ['115', 115],
    ]);
  });
});

describe('time', () => {
  const minutesOf = (start: string, end: string, zone = 'America/Denver') =>
    workMinutes(jobOf('AAAA', { start, end }), zone);

  test('work over midnight and over a change of the clocks is the time that passed', () => {
    expect(minutesOf('2026-01-05T23:30', '2026-01-06T01:00')).toBe(90);
    expect(minutesOf('2026-03-08T01:30', '2026-03-08T03:30')).toBe(60);
    expect(minutesOf('2026-10-31T23:00', '2026-11-01T03:00')).toBe(300);
    expect(minutesOf('2026-11-01T01:50', '2026-11-01T01:10')).toBe(20);
    expect(minutesOf('2026-10-31T23:00', '2026-11-01T03:00', 'UTC')).toBe(240);
  });

  test('work that ends before it begins is named, not charged as nothing', () => {
    expect(() => minutesOf('2026-01-05T23:30', '2026-01-05T01:00')).toThrow(/ends .* before it begins .*labour\.end/);
  });

  const hourly = (
    labour: JobInput['labour'],
    changed: Partial<Record<'minimumMinutes' | 'stepMinutes', number>> & { rounding?: 'nearest' },
  ) =>
    labourLines(
      jobOf('AAAA', labour),
      rateCard.parse({ schema: 'keyout-rates-1', hourly: [{ priceMinorUnits: 6000, ...changed }] }),
      null,
      settingOf(book, wordingIn('en')),
    ).map((line) => [line.quantity, line.because]);

  test('the minimum counts once a visit', () => {
    const labour: JobInput['labour'] = {
      start: '2026-01-05T08:00',
      end: '2026-01-05T08:20',
      hourlyExtras: [{ what: 'Bracket', minutes: 8 }],
    };
    expect(hourly(labour, { minimumMinutes: 60 })).toEqual([
      ['45', '12 min worked, rounded up to 15 min; at least 1 h a visit'],
      ['15', '8 min, rounded up to 15 min'],
    ]);
  });

  test('work by the hour without hours is asked for, not given away', () => {
    const visit = job.parse({ ...jobOf('AAAA', {}), identity: { visit: 'service call' } });
    expect(() => priced(visit)).toThrow(/2026-01-05-AAAA, labour\.start and labour\.end/);
  });

  test('seven minutes to the nearest quarter are nothing, and no line (29 CFR 785.48(b))', () => {
    const labour = (end: string) => ({ start: '2026-01-05T08:00', end: `2026-01-05T08:${end}` });
    expect(hourly(labour('07'), { rounding: 'nearest' })).toEqual([]);
    expect(hourly(labour('08'), { rounding: 'nearest' })).toEqual([
      ['15', '8 min worked, rounded to the nearest 15 min'],
    ]);
  });
});
