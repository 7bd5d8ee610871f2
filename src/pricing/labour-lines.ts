import { Problem } from '../problem.ts';
import { roundMinutes } from '../quantities/round-minutes.ts';
import type { Job } from '../records/job.ts';
import type { RateCard } from '../records/rate-card.ts';
import { validOn } from './effective-rates.ts';
import type { PricedLine } from './priced-line.ts';
import { workMinutes, writeMinutes } from './work-minutes.ts';

const plain = { baseQuantity: '1', discountMinorUnits: 0, discountBecause: '' };

function byTheHour(
  kind: PricedLine['kind'],
  what: string,
  minutes: number,
  priceMinorUnits: number,
  because: string,
): PricedLine {
  return {
    kind,
    what,
    because,
    quantity: String(minutes),
    unit: 'minute',
    unitPriceMinorUnits: String(priceMinorUnits),
    ...plain,
    baseQuantity: '60',
  };
}

/**
 * Hourly labour: work outside the flat rate, and minutes beyond those a flat rate includes.
 * @param job the job
 * @param rates the rate card that counts
 * @param includedMinutes minutes the flat rate includes, or null when none applies (then all work is by the hour)
 */
export function labourLines(job: Job, rates: RateCard, includedMinutes: number | null): readonly PricedLine[] {
  const hourly = validOn(rates.hourly, job.day);
  if (hourly === null) {
    throw new Problem(
      `No hourly price is valid on ${job.day}.`,
      'rates.json, hourly',
      'Add one whose dates include that day.',
    );
  }
  const charged = (minutes: number) =>
    Math.max(hourly.minimumMinutes, roundMinutes(minutes, hourly.stepMinutes, hourly.rounding));
  const rule = `${hourly.rounding === 'up' ? 'rounded up' : 'rounded'} to ${hourly.stepMinutes} min`;
  const extras = (job.labour?.hourlyExtras ?? []).filter((extra) => extra.minutes > 0);
  const extraMinutes = extras.reduce((sum, extra) => sum + extra.minutes, 0);
  const worked = Math.max(0, workMinutes(job) - extraMinutes);
  const beyond = worked - (includedMinutes ?? 0);
  const main =
    beyond <= 0
      ? []
      : [
          byTheHour(
            'labour',
            includedMinutes === null ? 'Labour' : 'Labour beyond the flat rate',
            charged(beyond),
            hourly.priceMinorUnits,
            includedMinutes === null
              ? `${writeMinutes(worked)} worked, ${rule}`
              : `${writeMinutes(worked)} worked less ${writeMinutes(includedMinutes)} included = ${writeMinutes(beyond)}, ${rule}`,
          ),
        ];
  return [
    ...main,
    ...extras.map((extra) =>
      byTheHour(
        'labour',
        extra.what,
        charged(extra.minutes),
        hourly.priceMinorUnits,
        `${writeMinutes(extra.minutes)}, ${rule}`,
      ),
    ),
  ];
}

/**
 * Waiting beyond the free minutes.
 * @param job the job
 * @param rates the rate card that counts
 */
export function waitingLines(job: Job, rates: RateCard): readonly PricedLine[] {
  const waited = job.labour?.waitingMinutes ?? 0;
  const rate = validOn(rates.waiting, job.day);
  const hourly = validOn(rates.hourly, job.day);
  const price = rate?.priceMinorUnits ?? hourly?.priceMinorUnits;
  if (rate === null || price === undefined || waited <= rate.freeMinutes) return [];
  const minutes = roundMinutes(waited - rate.freeMinutes, rate.stepMinutes, rate.rounding);
  if (minutes === 0) return [];
  const reason = job.labour?.waitingBecause === undefined ? '' : ` (${job.labour.waitingBecause})`;
  return [
    byTheHour(
      'waiting',
      'Waiting',
      minutes,
      price,
      `${writeMinutes(waited)} waited${reason} less ${writeMinutes(rate.freeMinutes)} free, ${rate.rounding === 'up' ? 'rounded up' : 'rounded'} to ${rate.stepMinutes} min`,
    ),
  ];
}
