import { Problem } from '../problem.ts';
import {
  decimalScale,
  decimalText,
  lineAmountMinorUnits,
  millionths,
  percentOfMinorUnits,
} from '../quantities/decimal.ts';
import { divideRounded } from '../quantities/divide-rounded.ts';
import type { Book } from '../records/book.ts';
import type { Job } from '../records/job.ts';
import type { RateCard } from '../records/rate-card.ts';
import type { Trip } from '../records/trip.ts';
import { validOn } from './effective-rates.ts';
import { labourLines, waitingLines } from './labour-lines.ts';
import type { PricedLine } from './priced-line.ts';
import { travelLines } from './travel-lines.ts';
import { writeMinutes } from './work-minutes.ts';

const plain = { unit: 'each', baseQuantity: '1', discountMinorUnits: 0, discountBecause: '' } as const;
const one = (
  kind: PricedLine['kind'],
  what: string,
  priceMinorUnits: number,
  because: string,
  quantity = '1',
): PricedLine => ({ kind, what, because, quantity, unitPriceMinorUnits: String(priceMinorUnits), ...plain });

/** What is priced: a job, its trip and the jobs that share it, the rates that count, and its place among like jobs of the day. */
export type PricingInput = {
  readonly job: Job;
  readonly trip: Trip | null;
  readonly tripJobs: readonly Job[];
  readonly rates: RateCard;
  readonly book: Book;
  /** 1 for the first job of the same flat rate on that day */
  readonly orderOnDay: number;
};

/**
 * Every line of a job, each with the reason for its figure.
 * @param input the job and what its price depends on
 * @throws Problem when the job names an extra or a part that the rate card lacks
 */
export function priceJob(input: PricingInput): readonly PricedLine[] {
  const { job, trip, tripJobs, rates } = input;
  const travel = trip === null ? [] : travelLines(job, trip, tripJobs, rates);
  const lines =
    job.identity.visit === 'wasted visit'
      ? [...wastedLines(job, rates), ...waitingLines(job, rates), ...travel]
      : [
          ...flatAndLabour(input),
          ...extraLines(job, rates),
          ...callOutLines(job, rates),
          ...waitingLines(job, rates),
          ...partLines(job, rates),
          ...travel,
        ];
  return lines.map((line) => discounted(line, job, rates));
}

function wastedLines(job: Job, rates: RateCard): readonly PricedLine[] {
  const rate = validOn(rates.wastedVisit, job.day);
  return rate === null
    ? []
    : [
        one(
          'wasted visit',
          'Wasted visit',
          rate.priceMinorUnits,
          job.identity.wastedBecause ?? 'the vehicle could not be worked on',
        ),
      ];
}

function flatAndLabour({ job, rates, orderOnDay }: PricingInput): readonly PricedLine[] {
  const fits = rates.flatRates.filter(
    (rate) =>
      rate.visit === job.identity.visit &&
      (rate.device === undefined || rate.device === job.device?.profile) &&
      (rate.class === undefined || rate.class === job.vehicle.class),
  );
  const closeness = (rate: RateCard['flatRates'][number]) =>
    (rate.device === undefined ? 0 : 2) + (rate.class === undefined ? 0 : 1);
  const valid = fits.filter((rate) => validOn([rate], job.day) !== null);
  const best = Math.max(...valid.map(closeness));
  const rate = valid.findLast((each) => closeness(each) === best);
  if (rate === undefined) return labourLines(job, rates, null);
  const tier = rate.tiers
    .filter((each) => each.fromQuantity <= orderOnDay)
    .sort((a, b) => a.fromQuantity - b.fromQuantity)
    .at(-1);
  const where = [rate.class, rate.device].filter((word) => word !== undefined).join(', ');
  const because = [
    `flat rate${where === '' ? '' : ` for ${where}`}`,
    `${writeMinutes(rate.includedMinutes)} included`,
    ...(tier === undefined ? [] : [`price from vehicle ${tier.fromQuantity} of the day on`]),
  ].join('; ');
  const visit = job.identity.visit ?? 'job';
  return [
    one(
      'flat rate',
      `${visit[0]?.toUpperCase()}${visit.slice(1)}`,
      tier?.priceMinorUnits ?? rate.priceMinorUnits,
      because,
    ),
    ...labourLines(job, rates, rate.includedMinutes + extraMinutesIncluded(job, rates)),
  ];
}

// an extra that was fitted brings the minutes that its own price includes
function extraMinutesIncluded(job: Job, rates: RateCard): number {
  return (job.labour?.extras ?? []).reduce((sum, { extra, quantity }) => {
    const rate = validOn(
      rates.extras.filter((each) => each.id === extra),
      job.day,
    );
    return sum + (rate?.includedMinutes ?? 0) * quantity;
  }, 0);
}

function extraLines(job: Job, rates: RateCard): readonly PricedLine[] {
  return (job.labour?.extras ?? []).map(({ extra, quantity }) => {
    const rate = validOn(
      rates.extras.filter((each) => each.id === extra),
      job.day,
    );
    if (rate === null)
      throw new Problem(
        `The rate card has no extra "${extra}" on ${job.day}.`,
        `${job.id}, labour.extras`,
        'Add it to rates.json, or take it off the job.',
      );
    return one('extra', rate.name, rate.priceMinorUnits, 'fitted as agreed in the rate card', String(quantity));
  });
}

function callOutLines(job: Job, rates: RateCard): readonly PricedLine[] {
  const rate = validOn(
    rates.callOut.filter((each) => job.identity.visit !== undefined && each.visits.includes(job.identity.visit)),
    job.day,
  );
  return rate === null ? [] : [one('call-out', 'Call-out', rate.priceMinorUnits, `for a ${job.identity.visit}`)];
}

function partLines(job: Job, rates: RateCard): readonly PricedLine[] {
  return (job.parts ?? []).map((part) => {
    const listed =
      part.part === undefined
        ? null
        : validOn(
            rates.parts.filter((each) => each.id === part.part),
            job.day,
          );
    if (part.part !== undefined && listed === null)
      throw new Problem(
        `The rate card has no part "${part.part}" on ${job.day}.`,
        `${job.id}, parts`,
        'Add it to rates.json, or give its cost on the job.',
      );
    const unit = part.unit;
    if (listed !== null)
      return { ...one('parts', part.what, listed.priceMinorUnits, 'price in the rate card', part.quantity), unit };
    const marked = divideRounded(
      BigInt(part.unitCostMinorUnits ?? 0) * (100n * decimalScale + millionths(rates.partsMarkUpPercent)),
      100n * decimalScale,
    );
    const because =
      millionths(rates.partsMarkUpPercent) === 0n
        ? 'at cost'
        : `cost plus ${decimalText(millionths(rates.partsMarkUpPercent))} % mark-up`;
    return { ...one('parts', part.what, Number(marked), because, part.quantity), unit };
  });
}

function discounted(line: PricedLine, job: Job, rates: RateCard): PricedLine {
  const rate = validOn(
    rates.lineDiscounts.filter((each) => each.kind === line.kind),
    job.day,
  );
  if (rate === null) return line;
  const amount = lineAmountMinorUnits(line.quantity, line.unitPriceMinorUnits, line.baseQuantity);
  return {
    ...line,
    discountMinorUnits: percentOfMinorUnits(amount, rate.percent),
    discountBecause: `${rate.percent} % off: ${rate.because}`,
  };
}
