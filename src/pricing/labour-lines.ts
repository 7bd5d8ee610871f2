import { Problem } from '../problem.ts';
import { roundMinutes } from '../quantities/round-minutes.ts';
import type { Job } from '../records/job.ts';
import type { RateCard } from '../records/rate-card.ts';
import { validOn } from './effective-rates.ts';
import { oneOf, type PricedLine } from './priced-line.ts';
import { workMinutes, writeMinutes } from './work-minutes.ts';

type Step = { readonly stepMinutes: number; readonly rounding: 'up' | 'nearest' };
type Stretch = { readonly what: string; readonly minutes: number; readonly because: string };

function byTheHour(
  kind: PricedLine['kind'],
  what: string,
  minutes: number,
  priceMinorUnits: number,
  because: string,
): PricedLine {
  return {
    ...oneOf(kind, what, priceMinorUnits, because, String(minutes)),
    unit: 'minute',
    baseQuantity: '60',
  };
}

function ruleOf({ stepMinutes, rounding }: Step): string {
  return rounding === 'up' ? `rounded up to ${stepMinutes} min` : `rounded to the nearest ${stepMinutes} min`;
}

function stretchesOf(job: Job, includedMinutes: number | null, timeZone: string): readonly Stretch[] {
  const extras = (job.labour?.hourlyExtras ?? []).filter((extra) => extra.minutes > 0);
  const extraMinutes = extras.reduce((sum, extra) => sum + extra.minutes, 0);
  const worked = Math.max(0, workMinutes(job, timeZone) - extraMinutes);
  const beyond = worked - (includedMinutes ?? 0);
  const main =
    includedMinutes === null
      ? { what: 'Labour', minutes: beyond, because: `${writeMinutes(worked)} worked` }
      : {
          what: 'Labour beyond the flat rate',
          minutes: beyond,
          because: `${writeMinutes(worked)} worked less ${writeMinutes(includedMinutes)} included = ${writeMinutes(beyond)}`,
        };
  return [
    ...(beyond > 0 ? [main] : []),
    ...extras.map(({ what, minutes }) => ({ what, minutes, because: writeMinutes(minutes) })),
  ];
}

/**
 * Hourly labour: work outside the flat rate, and minutes beyond those a flat rate includes, each rounded on its own;
 * what is missing to the minimum of the rate card is added to the first.
 * @param job the job
 * @param rates the rate card that counts
 * @param includedMinutes minutes the flat rate includes, or null when none applies (then all work is by the hour)
 * @param timeZone the business's time zone
 * @throws Problem when there is hourly work and no hourly price is valid on the day, or the times are impossible
 */
export function labourLines(
  job: Job,
  rates: RateCard,
  includedMinutes: number | null,
  timeZone: string,
): readonly PricedLine[] {
  const stretches = stretchesOf(job, includedMinutes, timeZone);
  const hourly = validOn(rates.hourly, job.day);
  if (hourly === null) {
    throw new Problem(
      `No hourly price is valid on ${job.day}.`,
      'rates.json, hourly',
      'Add one whose dates include that day.',
    );
  }
  const rule = ruleOf(hourly);
  const charged = stretches
    .map((each) => ({ ...each, charged: roundMinutes(each.minutes, hourly.stepMinutes, hourly.rounding) }))
    .filter((each) => each.charged > 0 || hourly.minimumMinutes > 0);
  const missing = hourly.minimumMinutes - charged.reduce((sum, each) => sum + each.charged, 0);
  return charged
    .map((each, place) =>
      place === 0 && missing > 0
        ? {
            ...each,
            charged: each.charged + missing,
            because: `${each.because}, ${rule}; at least ${writeMinutes(hourly.minimumMinutes)} a visit`,
          }
        : { ...each, because: `${each.because}, ${rule}` },
    )
    .filter((each) => each.charged > 0)
    .map((each) => byTheHour('labour', each.what, each.charged, hourly.priceMinorUnits, each.because));
}

/**
 * Waiting beyond the free minutes; where the rate card says nothing of waiting, none is charged.
 * @param job the job
 * @param rates the rate card that counts
 */
export function waitingLines(job: Job, rates: RateCard): readonly PricedLine[] {
  const waited = job.labour?.waitingMinutes ?? 0;
  const rate = validOn(rates.waiting, job.day);
  const price = rate?.priceMinorUnits ?? validOn(rates.hourly, job.day)?.priceMinorUnits;
  if (rate === null || price === undefined || waited <= rate.freeMinutes) return [];
  const minutes = roundMinutes(waited - rate.freeMinutes, rate.stepMinutes, rate.rounding);
  if (minutes === 0) return [];
  const reason = job.labour?.waitingBecause === undefined ? '' : ` (${job.labour.waitingBecause})`;
  const because = `${writeMinutes(waited)} waited${reason} less ${writeMinutes(rate.freeMinutes)} free, ${ruleOf(rate)}`;
  return [byTheHour('waiting', 'Waiting', minutes, price, because)];
}
