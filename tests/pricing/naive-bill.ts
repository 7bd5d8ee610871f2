import dayjs from 'dayjs';
import utc from 'dayjs/plugin/utc.js';
import { Decimal } from 'decimal.js';
import type { Book } from '../../src/records/book.ts';
import type { Job } from '../../src/records/job.ts';
import type { RateCard } from '../../src/records/rate-card.ts';
import type { Trip } from '../../src/records/trip.ts';

dayjs.extend(utc);

/** Amounts by kind of line, in minor units, before tax. */
export type NaiveAmounts = Readonly<Record<string, number>>;

const round = (value: Decimal.Value) => new Decimal(value).toDecimalPlaces(0, Decimal.ROUND_HALF_UP).toNumber();
const minutesBetween = (start: string, end: string) => dayjs.utc(end).diff(dayjs.utc(start), 'minute');

function onDay<Entry extends { from?: string | undefined; to?: string | undefined }>(
  entries: readonly Entry[],
  day: string,
) {
  let found: Entry | undefined;
  for (const entry of entries) if ((entry.from ?? '0') <= day && day <= (entry.to ?? '9')) found = entry;
  return found;
}

function stepped(minutes: number, step: number, rounding: 'up' | 'nearest'): number {
  const steps = new Decimal(minutes).div(step);
  return steps.toDecimalPlaces(0, rounding === 'up' ? Decimal.ROUND_CEIL : Decimal.ROUND_HALF_UP).toNumber() * step;
}

const worked = (job: Job) =>
  job.labour?.start === undefined || job.labour.end === undefined
    ? 0
    : Math.max(
        0,
        minutesBetween(job.labour.start, job.labour.end) - job.labour.breakMinutes - job.labour.waitingMinutes,
      );

function flatRate(job: Job, rates: RateCard) {
  const wants = [
    [job.device?.profile, job.vehicle.class],
    [job.device?.profile, undefined],
    [undefined, job.vehicle.class],
    [undefined, undefined],
  ];
  for (const [device, vehicleClass] of wants) {
    const exact = rates.flatRates.filter(
      (each) => each.visit === job.identity.visit && each.device === device && each.class === vehicleClass,
    );
    const found = onDay(exact, job.day);
    if (found !== undefined) return found;
  }
  return undefined;
}

/** Looks at every minute of the visit on the wall clock of UTC. */
function surcharge(job: Job, rates: RateCard, base: number): number {
  const { start, end } = job.labour ?? {};
  if (start === undefined || end === undefined) return 0;
  const all = minutesBetween(start, end);
  const counted = new Map<string, number>();
  for (let minute = 0; minute < all; minute += 1) {
    const moment = dayjs.utc(start).add(minute, 'minute');
    const clock = moment.format('HH:mm');
    const fits = [
      ['holiday', rates.holidays.some((each) => each.day === moment.format('YYYY-MM-DD'))],
      ['weekend', moment.day() === 0 || moment.day() === 6],
      ['out of hours', clock < rates.ordinaryHours.start || clock >= rates.ordinaryHours.end],
    ] as const;
    let best: { when: string; percent: number } | undefined;
    for (const [when, applies] of fits) {
      const percent = Number(
        onDay(
          rates.surcharges.filter((each) => each.when === when),
          job.day,
        )?.percent ?? 0,
      );
      if (applies && percent > (best?.percent ?? 0)) best = { when, percent };
    }
    if (best !== undefined)
      counted.set(`${best.percent} ${best.when}`, (counted.get(`${best.percent} ${best.when}`) ?? 0) + 1);
  }
  let sum = 0;
  for (const [key, minutes] of counted)
    sum += round(
      new Decimal(base)
        .times(key.split(' ')[0] ?? 0)
        .div(100)
        .times(minutes)
        .div(all),
    );
  return sum;
}

/** Largest remainders, found by giving one at a time to whoever is owed most. */
function shareOf(total: number, weights: readonly number[], place: number): number {
  const even = weights.every((weight) => weight === 0);
  const counted = even ? weights.map(() => 1) : weights;
  const sum = counted.reduce((all, each) => all.plus(each), new Decimal(0));
  const exact = counted.map((weight) => new Decimal(total).times(weight).div(sum));
  const shares = exact.map((each) => each.floor().toNumber());
  const given = exact.map(() => false);
  for (let rest = total - shares.reduce((all, each) => all + each, 0); rest > 0; rest -= 1) {
    let most = -1;
    exact.forEach((each, index) => {
      const rests = each.minus(each.floor());
      const best = exact[most];
      if (!given[index] && (best === undefined || rests.gt(best.minus(best.floor())))) most = index;
    });
    given[most] = true;
    shares[most] = (shares[most] ?? 0) + 1;
  }
  return shares[place] ?? 0;
}

function labour(job: Job, rates: RateCard, included: number | undefined): number {
  const hourly = onDay(rates.hourly, job.day);
  if (hourly === undefined) return 0;
  const extras = (job.labour?.hourlyExtras ?? []).map((each) => each.minutes);
  const main = Math.max(0, worked(job) - extras.reduce((sum, each) => sum + each, 0)) - (included ?? 0);
  const charged = [main, ...extras]
    .filter((minutes) => minutes > 0)
    .map((minutes) => stepped(minutes, hourly.stepMinutes, hourly.rounding));
  const missing = hourly.minimumMinutes - charged.reduce((sum, each) => sum + each, 0);
  if (charged.length > 0 && missing > 0) charged[0] = (charged[0] ?? 0) + missing;
  return charged.reduce((sum, minutes) => sum + round(new Decimal(minutes).times(hourly.priceMinorUnits).div(60)), 0);
}

/**
 * What a job comes to, worked out a second time from the raw record, without the program's own arithmetic: decimal.js,
 * one minute at a time, the business's clock on UTC. Used only by tests.
 */
export function naiveAmounts(
  job: Job,
  trip: Trip | null,
  tripJobs: readonly Job[],
  rates: RateCard,
  order: number,
): NaiveAmounts {
  const amounts: Record<string, number> = {};
  const add = (kind: string, amount: number) => {
    amounts[kind] = (amounts[kind] ?? 0) + amount;
  };
  const extraOf = (id: string) =>
    onDay(
      rates.extras.filter((each) => each.id === id),
      job.day,
    );
  if (job.identity.visit === 'wasted visit')
    add('wasted visit', onDay(rates.wastedVisit, job.day)?.priceMinorUnits ?? 0);
  else {
    const flat = flatRate(job, rates);
    const tier = flat?.tiers
      .filter((each) => order >= each.fromQuantity)
      .sort((a, b) => b.fromQuantity - a.fromQuantity)[0];
    const flatPrice = tier?.priceMinorUnits ?? flat?.priceMinorUnits ?? 0;
    const brought = (job.labour?.extras ?? []).map(
      (each) => (extraOf(each.extra)?.includedMinutes ?? 0) * each.quantity,
    );
    const included =
      flat === undefined ? undefined : flat.includedMinutes + brought.reduce((sum, each) => sum + each, 0);
    const hours = labour(job, rates, included);
    add('flat rate', flatPrice);
    add('labour', hours);
    add('surcharge', surcharge(job, rates, flatPrice + hours));
  }
  for (const each of job.labour?.extras ?? [])
    add('extra', (extraOf(each.extra)?.priceMinorUnits ?? 0) * each.quantity);
  const visit = job.identity.visit ?? 'new fit';
  add(
    'call-out',
    onDay(
      rates.callOut.filter((each) => each.visits.includes(visit)),
      job.day,
    )?.priceMinorUnits ?? 0,
  );
  const waiting = onDay(rates.waiting, job.day);
  if (waiting !== undefined) {
    const minutes = Math.max(0, (job.labour?.waitingMinutes ?? 0) - waiting.freeMinutes);
    const price = waiting.priceMinorUnits ?? onDay(rates.hourly, job.day)?.priceMinorUnits ?? 0;
    add('waiting', round(new Decimal(stepped(minutes, waiting.stepMinutes, waiting.rounding)).times(price).div(60)));
  }
  for (const part of job.parts ?? []) {
    const listed = onDay(
      rates.parts.filter((each) => each.id === part.part),
      job.day,
    );
    const cost = new Decimal(part.unitCostMinorUnits ?? 0).times(
      new Decimal(rates.partsMarkUpPercent).div(100).plus(1),
    );
    add('parts', round(new Decimal(part.quantity).times(listed?.priceMinorUnits ?? cost)));
  }
  if (trip !== null) addTravel(add, job, trip, tripJobs, rates);
  return Object.fromEntries(Object.entries(amounts).filter(([, amount]) => amount !== 0));
}

function addTravel(
  add: (kind: string, amount: number) => void,
  job: Job,
  trip: Trip,
  tripJobs: readonly Job[],
  rates: RateCard,
): void {
  const place = trip.jobs.findIndex((each) => each.job === job.id);
  const weights = trip.jobs.map((each) => {
    if (trip.shareBy === 'equally') return 1;
    const other = tripJobs.find((one) => one.id === each.job);
    return trip.shareBy === 'distance' ? Number(each.distance) : other === undefined ? 0 : worked(other);
  });
  add('tolls and parking', shareOf(trip.tollsMinorUnits + trip.parkingMinorUnits, weights, place));
  const rate = onDay(rates.travel, trip.day);
  if (rate === undefined) return;
  const beyond = Decimal.max(0, new Decimal(trip.distance).minus(rate.freeDistance));
  add('travel distance', shareOf(round(beyond.times(rate.pricePerDistanceMinorUnits)), weights, place));
  const minutes = stepped(
    Math.max(0, trip.travelMinutes - rate.freeTravelMinutes),
    rate.timeStepMinutes,
    rate.timeRounding,
  );
  add('travel time', shareOf(round(new Decimal(minutes).times(rate.timePriceMinorUnits).div(60)), weights, place));
}

/** Tax on amounts by kind, by the book's codes: one rounding for each category and rate. */
export function naiveTax(amounts: NaiveAmounts, tax: Book['tax']): number {
  const bases = new Map<string, number>();
  for (const [kind, amount] of Object.entries(amounts)) {
    const id = (tax.lines as Record<string, string>)[kind] ?? tax.lines.default;
    const code = tax.codes.find((each) => each.id === id);
    const rate = (code?.jurisdictions ?? []).reduce((sum, each) => sum.plus(each.ratePercent), new Decimal(0));
    bases.set(rate.toString(), (bases.get(rate.toString()) ?? 0) + amount);
  }
  return [...bases].reduce((sum, [rate, base]) => sum + round(new Decimal(base).times(rate).div(100)), 0);
}
