import { Problem } from '../problem.ts';
import { roundMinutes } from '../quantities/round-minutes.ts';
import type { Job } from '../records/job.ts';
import type { RateCard } from '../records/rate-card.ts';
import { validOn } from './effective-rates.ts';
import { oneOf, type PricedLine } from './priced-line.ts';
import type { Setting } from './setting.ts';
import { workMinutes, writeMinutes } from './work-minutes.ts';

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

function stretchesOf(job: Job, includedMinutes: number | null, { timeZone, words }: Setting): readonly Stretch[] {
  const extras = (job.labour?.hourlyExtras ?? []).filter((extra) => extra.minutes > 0);
  const extraMinutes = extras.reduce((sum, extra) => sum + extra.minutes, 0);
  const worked = Math.max(0, workMinutes(job, timeZone) - extraMinutes);
  const beyond = worked - (includedMinutes ?? 0);
  const main =
    includedMinutes === null
      ? { what: words.labour, minutes: beyond, because: words.worked(writeMinutes(worked)) }
      : {
          what: words.labourBeyond,
          minutes: beyond,
          because: words.workedLess(writeMinutes(worked), writeMinutes(includedMinutes), writeMinutes(beyond)),
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
 * @param setting the business's time zone, and in which words
 * @throws Problem when there is hourly work and no hourly price is valid on the day, or the times are impossible
 */
export function labourLines(
  job: Job,
  rates: RateCard,
  includedMinutes: number | null,
  setting: Setting,
): readonly PricedLine[] {
  const stretches = stretchesOf(job, includedMinutes, setting);
  const hourly = validOn(rates.hourly, job.day);
  if (hourly === null) {
    throw new Problem(
      `No hourly price is valid on ${job.day}.`,
      'rates.json, hourly',
      'Add one whose dates include that day.',
    );
  }
  const { words } = setting;
  const rule = words.rounded(hourly.stepMinutes, hourly.rounding);
  const charged = stretches
    .map((each) => ({ ...each, charged: roundMinutes(each.minutes, hourly.stepMinutes, hourly.rounding) }))
    .filter((each) => each.charged > 0 || hourly.minimumMinutes > 0);
  const missing = hourly.minimumMinutes - charged.reduce((sum, each) => sum + each.charged, 0);
  return charged
    .map((each, index) =>
      index === 0 && missing > 0
        ? {
            ...each,
            charged: each.charged + missing,
            because: `${each.because}, ${rule}; ${words.atLeast(writeMinutes(hourly.minimumMinutes))}`,
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
 * @param setting in which words
 */
export function waitingLines(job: Job, rates: RateCard, { words }: Setting): readonly PricedLine[] {
  const waited = job.labour?.waitingMinutes ?? 0;
  const rate = validOn(rates.waiting, job.day);
  const price = rate?.priceMinorUnits ?? validOn(rates.hourly, job.day)?.priceMinorUnits;
  if (rate === null || price === undefined || waited <= rate.freeMinutes) return [];
  const minutes = roundMinutes(waited - rate.freeMinutes, rate.stepMinutes, rate.rounding);
  if (minutes === 0) return [];
  const counted = words.waited(writeMinutes(waited), job.labour?.waitingBecause ?? '', writeMinutes(rate.freeMinutes));
  const because = `${counted}, ${words.rounded(rate.stepMinutes, rate.rounding)}`;
  return [byTheHour('waiting', words.waiting, minutes, price, because)];
}
