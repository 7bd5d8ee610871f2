import type { Job } from '../records/job.ts';
import type { RateCard } from '../records/rate-card.ts';
import { type RatesThatCount, validOn } from './effective-rates.ts';
import { oneOf, type PricedLine } from './priced-line.ts';
import type { Setting } from './setting.ts';
import { writeMinutes } from './work-minutes.ts';

type FlatRate = RateCard['flatRates'][number];

// a device counts more than a class of vehicle
function narrowness(rate: FlatRate): number {
  return (rate.device === undefined ? 0 : 2) + (rate.class === undefined ? 0 : 1);
}

function narrowestOf(job: Job, flatRates: readonly FlatRate[]): FlatRate | null {
  const fits = flatRates.filter(
    (rate) =>
      rate.visit === job.identity.visit &&
      (rate.device === undefined || rate.device === job.device?.profile) &&
      (rate.class === undefined || rate.class === job.vehicle.class) &&
      validOn([rate], job.day) !== null,
  );
  const narrowest = Math.max(...fits.map(narrowness));
  return fits.findLast((each) => narrowness(each) === narrowest) ?? null;
}

/**
 * The flat rate of a job: the payer's before the general ones, of either the narrowest that is meant for its visit,
 * device and class of vehicle and valid on its day; of equally narrow ones the later in the list; null when none is.
 * @param job the job
 * @param rates the rates that count
 */
export function flatRateOf(job: Job, rates: RatesThatCount): FlatRate | null {
  return narrowestOf(job, rates.payerFlatRates ?? []) ?? narrowestOf(job, rates.flatRates);
}

/**
 * A job's place among the jobs of its day that have the same flat rate, in the order of their names; 1 for the first.
 * @param job the job
 * @param sameDay the jobs of the day for the same payer, this one among them
 * @param rates the rate card that counts
 */
export function orderOnDay(job: Job, sameDay: readonly Job[], rates: RatesThatCount): number {
  const own = flatRateOf(job, rates);
  const alike = sameDay.filter((each) => own !== null && each.day === job.day && flatRateOf(each, rates) === own);
  const before = alike.filter((each) => each.id < job.id);
  return before.length + 1;
}

/**
 * The line of a flat rate, at the price of its tier.
 * @param rate the flat rate
 * @param visit the kind of visit
 * @param order the job's place among those of the day with the same flat rate
 * @param setting in which words
 */
export function flatLine(
  rate: FlatRate,
  visit: Job['identity']['visit'],
  order: number,
  { words }: Setting,
): PricedLine {
  const tier = rate.tiers
    .filter((each) => each.fromQuantity <= order)
    .sort((one, other) => one.fromQuantity - other.fromQuantity)
    .at(-1);
  const meant = [rate.class === undefined ? undefined : words.classes[rate.class], rate.device];
  const because = [
    words.flatRate(meant.filter((word) => word !== undefined).join(', ')),
    ...(rate.includedMinutes === 0 ? [] : [words.included(writeMinutes(rate.includedMinutes))]),
    ...(tier === undefined ? [] : [words.fromVehicle(tier.fromQuantity)]),
  ].join('; ');
  const name = visit === undefined ? words.job : words.visits[visit];
  const what = `${name[0]?.toUpperCase()}${name.slice(1)}`;
  return oneOf('flat rate', what, tier?.priceMinorUnits ?? rate.priceMinorUnits, because);
}
