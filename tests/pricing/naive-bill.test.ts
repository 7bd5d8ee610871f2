import fc from 'fast-check';
import { expect, test } from 'vitest';
import { decimalText, lineAmountMinorUnits } from '../../src/quantities/decimal.ts';
import { book } from '../../src/records/book.ts';
import { type Job, type JobInput, job } from '../../src/records/job.ts';
import { type RateCard, rateCard } from '../../src/records/rate-card.ts';
import { type Trip, trip } from '../../src/records/trip.ts';
import { soundFacts, soundJob, soundPayer } from '../../src/rules/sound-job.ts';
import { naiveAmounts, naiveTax } from './naive-bill.ts';
import { recheckDocument, total } from './recheck-document.ts';
import { makeInvoice, priceJob } from './worded.ts';

const owner = book.parse({
  ...soundFacts(soundJob).book,
  tax: {
    regime: 'sales tax',
    codes: [
      {
        id: 'parts',
        name: 'Parts',
        category: 'S',
        jurisdictions: [
          { name: 'State', ratePercent: '2.9' },
          { name: 'City', ratePercent: '5.975' },
        ],
      },
      { id: 'services', name: 'Services', category: 'E', jurisdictions: [], reason: 'Not taxable here' },
    ],
    lines: { default: 'services', parts: 'parts', extra: 'parts' },
  },
});

const cents = fc.integer({ min: 0, max: 30_000 });
const rounding = fc.constantFrom('up', 'nearest');
const step = fc.constantFrom(1, 6, 15, 30);
const minutes = fc.integer({ min: 0, max: 90 });
const decimal = (max: number) =>
  fc.integer({ min: 0, max: max * 1000 }).map((each) => decimalText(BigInt(each) * 1000n));
const dates = fc.constantFrom({}, {}, { from: '2026-06-01' }, { to: '2026-05-31' });
const list = <Entry>(entry: fc.Arbitrary<Entry>) => fc.array(entry, { maxLength: 3 });
const dated = <Entry>(entry: fc.Arbitrary<Entry>) =>
  list(fc.tuple(entry, dates).map(([own, days]) => ({ ...own, ...days })));
const optionalClass = fc.constantFrom({}, { class: 'van' }, { class: 'heavy truck' });
const optionalDevice = fc.constantFrom({}, { device: 'tracker' });

const arbitraryRates = fc
  .record({
    flatRates: dated(
      fc
        .tuple(
          fc.record({
            visit: fc.constantFrom('new fit', 'swap'),
            priceMinorUnits: cents,
            includedMinutes: minutes,
            tiers: list(fc.record({ fromQuantity: fc.integer({ min: 2, max: 4 }), priceMinorUnits: cents })).map(
              (tiers) =>
                tiers.filter(
                  (tier, place) => tiers.findIndex((each) => each.fromQuantity === tier.fromQuantity) === place,
                ),
            ),
          }),
          optionalClass,
          optionalDevice,
        )
        .map(([own, vehicle, device]) => ({ ...own, ...vehicle, ...device })),
    ),
    hourly: fc.record({
      priceMinorUnits: cents,
      stepMinutes: step,
      rounding,
      minimumMinutes: fc.constantFrom(0, 0, 60),
    }),
    laterHourly: dated(fc.record({ priceMinorUnits: cents, stepMinutes: step, rounding })),
    waiting: dated(fc.record({ freeMinutes: minutes, priceMinorUnits: cents, stepMinutes: step, rounding })),
    callOut: dated(fc.record({ priceMinorUnits: cents, visits: fc.constant(['swap', 'service call']) })),
    travel: dated(
      fc.record({
        pricePerDistanceMinorUnits: decimal(200),
        unit: fc.constant('mi'),
        freeDistance: decimal(30),
        timePriceMinorUnits: cents,
        timeStepMinutes: step,
        timeRounding: rounding,
        freeTravelMinutes: minutes,
      }),
    ),
    extras: fc.constant([{ id: 'lead', name: 'Lead', priceMinorUnits: 3500, includedMinutes: 20 }]),
    parts: dated(
      fc.record({ id: fc.constant('kit'), name: fc.constant('Kit'), priceMinorUnits: fc.oneof(cents, decimal(50)) }),
    ),
    partsMarkUpPercent: decimal(60),
    wastedVisit: dated(fc.record({ priceMinorUnits: cents })),
    surcharges: dated(
      fc.record({
        name: fc.constant('Surcharge'),
        when: fc.constantFrom('out of hours', 'weekend', 'holiday'),
        percent: fc.constantFrom('0', '25', '50', '33.333', '100'),
      }),
    ),
  })
  .map(({ hourly, laterHourly, ...rest }) =>
    rateCard.parse({
      schema: 'keyout-rates-1',
      ...rest,
      hourly: [hourly, ...laterHourly],
      holidays: [{ day: '2026-06-05', name: 'A day off' }],
    }),
  );

const clock = (minute: number) => new Date(Date.UTC(2026, 4, 29, 0, minute)).toISOString().slice(0, 16);
const arbitraryJob = fc
  .record({
    visit: fc.constantFrom('new fit', 'new fit', 'swap', 'service call', 'wasted visit'),
    vehicle: optionalClass,
    device: fc.constantFrom({}, { device: { profile: 'tracker' } }),
    // from Friday, May 29th, to the Saturday of the week after, so that prices change and weekends and nights occur
    start: fc.integer({ min: 0, max: 12_000 }),
    length: fc.integer({ min: 0, max: 700 }),
    breakMinutes: fc.constantFrom(0, 0, 30),
    waitingMinutes: fc.constantFrom(0, 10, 25, 47),
    hourlyExtras: list(fc.record({ what: fc.constant('Bracket'), minutes: fc.integer({ min: 0, max: 50 }) })),
    extras: fc.constantFrom([], [{ extra: 'lead', quantity: 2 }]),
    parts: list(
      fc.tuple(decimal(20), cents, fc.boolean()).map(([quantity, unitCostMinorUnits, listed]) => ({
        what: 'Kit',
        quantity: quantity === '0' ? '1' : quantity,
        unitCostMinorUnits,
        ...(listed ? { part: 'kit' } : {}),
      })),
    ),
    distance: decimal(50),
    order: fc.integer({ min: 1, max: 4 }),
  })
  .map(({ visit, vehicle, device, start, length, parts, distance, order, extras, ...labour }) => ({
    record: {
      identity: { visit },
      vehicle,
      ...device,
      parts,
      labour: { ...labour, extras: [...extras], start: clock(start), end: clock(start + length) },
    } satisfies Partial<JobInput>,
    distance,
    order,
  }));

const arbitraryTrip = fc.record({
  distance: decimal(300),
  travelMinutes: fc.integer({ min: 0, max: 400 }),
  tollsMinorUnits: fc.integer({ min: 0, max: 2000 }),
  parkingMinorUnits: fc.integer({ min: 0, max: 2000 }),
  shareBy: fc.constantFrom('equally', 'time', 'distance'),
});

function charged(record: Job, order: number, day: Trip, jobs: readonly Job[], rates: RateCard) {
  const lines = priceJob({ job: record, trip: day, tripJobs: jobs, rates, book: owner, orderOnDay: order });
  const amounts: Record<string, number> = {};
  for (const line of lines)
    amounts[line.kind] =
      (amounts[line.kind] ?? 0) + lineAmountMinorUnits(line.quantity, line.unitPriceMinorUnits, line.baseQuantity);
  return { order, lines, amounts: Object.fromEntries(Object.entries(amounts).filter(([, amount]) => amount !== 0)) };
}

test('any jobs at any rates come to what a naive second calculation makes of the raw records', () => {
  fc.assert(
    fc.property(
      arbitraryRates,
      fc.array(arbitraryJob, { minLength: 1, maxLength: 4 }),
      arbitraryTrip,
      (rates, drawn, travelled) => {
        const jobs = drawn.map(({ record }, place) => {
          const day = record.labour?.start?.slice(0, 10) ?? '2026-06-01';
          return job.parse({ schema: 'keyout-job-1', id: `${day}-AAA${place}`, day, ...record });
        });
        const day = trip.parse({
          schema: 'keyout-trip-1',
          day: jobs[0]?.day,
          unit: 'mi',
          ...travelled,
          jobs: jobs.map(({ id }, place) => ({ job: id, distance: drawn[place]?.distance })),
        });
        const billed = jobs.map((record, place) => ({
          record,
          ...charged(record, drawn[place]?.order ?? 1, day, jobs, rates),
        }));
        for (const { record, order, amounts } of billed)
          expect(amounts).toEqual(naiveAmounts(record, day, jobs, rates, order));
        expect(total(billed.map(({ amounts }) => amounts['tolls and parking'] ?? 0))).toBe(
          day.tollsMinorUnits + day.parkingMinorUnits,
        );
        if (billed.every(({ lines }) => lines.length === 0)) return;
        const made = makeInvoice({
          number: 'draft',
          issued: '2026-06-30',
          book: owner,
          payer: soundPayer,
          jobs: billed.map(({ record, lines }) => ({ job: record, lines })),
          documentDiscountPercent: '0',
        });
        recheckDocument(made);
        const sums: Record<string, number> = {};
        for (const { record, order } of billed)
          for (const [kind, amount] of Object.entries(naiveAmounts(record, day, jobs, rates, order)))
            sums[kind] = (sums[kind] ?? 0) + amount;
        expect(made.totals.netMinorUnits).toBe(total(Object.values(sums)));
        expect(made.totals.taxMinorUnits).toBe(naiveTax(sums, owner.tax));
        for (const line of made.lines) expect(line.because).not.toBe('');
      },
    ),
    { numRuns: 60 },
  );
});
