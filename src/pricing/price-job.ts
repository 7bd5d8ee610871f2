import { Problem } from '../problem.ts';
import { lineAmountMinorUnits, percentOfMinorUnits } from '../quantities/decimal.ts';
import type { Book } from '../records/book.ts';
import type { Job } from '../records/job.ts';
import type { RateCard } from '../records/rate-card.ts';
import type { Trip } from '../records/trip.ts';
import { type RatesThatCount, validOn } from './effective-rates.ts';
import { flatLine, flatRateOf } from './flat-rate.ts';
import { labourLines, waitingLines } from './labour-lines.ts';
import { partLines } from './part-lines.ts';
import { oneOf, type PricedLine } from './priced-line.ts';
import type { Wording } from './pricing-words.ts';
import { type Setting, settingOf } from './setting.ts';
import { surchargeLines } from './surcharge-lines.ts';
import { travelLines } from './travel-lines.ts';
import { workSpan } from './work-minutes.ts';

/** What is priced: a job, its trip and the jobs that share it, the rates that count, and its place among like jobs of the day. */
export type PricingInput = {
  readonly job: Job;
  readonly trip: Trip | null;
  readonly tripJobs: readonly Job[];
  readonly rates: RatesThatCount;
  readonly book: Book;
  /** the invoice's language and its words */
  readonly wording: Wording;
  /** 1 for the first job of the same flat rate on that day */
  readonly orderOnDay: number;
};

/**
 * Every line of a job, each with the reason for its figure.
 * @param input the job and what its price depends on
 * @throws Problem when the job or its trip names what the rate card lacks, or leaves out what a price depends on
 */
export function priceJob(input: PricingInput): readonly PricedLine[] {
  const { job, trip, tripJobs, rates, book } = input;
  const setting = settingOf(book, input.wording);
  const work = job.identity.visit === 'wasted visit' ? wastedLines(job, rates, setting) : flatAndLabour(input, setting);
  const lines = [
    ...work,
    ...surchargeLines(
      job,
      work.filter((line) => line.kind !== 'wasted visit'),
      rates,
      setting,
    ),
    ...extraLines(job, rates, setting),
    ...callOutLines(job, rates, setting),
    ...waitingLines(job, rates, setting),
    ...partLines(job, rates, setting),
    ...(trip === null ? [] : travelLines(job, trip, tripJobs, rates, setting)),
  ];
  return lines.map((line) => discounted(line, job, rates, setting));
}

function wastedLines(job: Job, rates: RateCard, { words }: Setting): readonly PricedLine[] {
  const rate = validOn(rates.wastedVisit, job.day);
  const because = job.identity.wastedBecause ?? words.notWorkedOn;
  return rate === null || rate.priceMinorUnits === 0
    ? []
    : [oneOf('wasted visit', words.wastedVisit, rate.priceMinorUnits, because)];
}

function flatAndLabour({ job, rates, orderOnDay }: PricingInput, setting: Setting): readonly PricedLine[] {
  const rate = flatRateOf(job, rates);
  if (rate === null) {
    // no times would be no hours, and the work a gift
    if (workSpan(job, setting.timeZone) === null)
      throw new Problem(
        'No flat rate fits the job, so that its work is charged by the hour, and no hours are recorded.',
        `${job.id}, labour.start and labour.end`,
        'Record when the work began and ended, or add a flat rate for this kind of visit to rates.json.',
      );
    return labourLines(job, rates, null, setting);
  }
  const included = rate.includedMinutes + extraMinutesIncluded(job, rates);
  return [flatLine(rate, job.identity.visit, orderOnDay, setting), ...labourLines(job, rates, included, setting)];
}

function extraRate(id: string, job: Job, rates: RateCard): RateCard['extras'][number] | null {
  return validOn(
    rates.extras.filter((each) => each.id === id),
    job.day,
  );
}

/** Minutes that fitted extras bring with them, so that they are not charged again by the hour. */
function extraMinutesIncluded(job: Job, rates: RateCard): number {
  return (job.labour?.extras ?? []).reduce(
    (sum, { extra, quantity }) => sum + (extraRate(extra, job, rates)?.includedMinutes ?? 0) * quantity,
    0,
  );
}

function extraLines(job: Job, rates: RateCard, { words }: Setting): readonly PricedLine[] {
  return (job.labour?.extras ?? []).map(({ extra, quantity }, index) => {
    const rate = extraRate(extra, job, rates);
    if (rate === null)
      throw new Problem(
        `The rate card has no extra "${extra}" on ${job.day}.`,
        `${job.id}, labour.extras[${index + 1}].extra`,
        'Add it to rates.json, or take it off the job.',
      );
    return oneOf('extra', rate.name, rate.priceMinorUnits, words.fitted, String(quantity));
  });
}

function callOutLines(job: Job, rates: RateCard, { words }: Setting): readonly PricedLine[] {
  const visit = job.identity.visit;
  const rate = validOn(
    rates.callOut.filter((each) => visit !== undefined && each.visits.includes(visit)),
    job.day,
  );
  return rate === null || rate.priceMinorUnits === 0 || visit === undefined
    ? []
    : [oneOf('call-out', words.callOut, rate.priceMinorUnits, words.callOutFor(words.visits[visit]))];
}

function discounted(line: PricedLine, job: Job, rates: RateCard, { words, decimal }: Setting): PricedLine {
  const rate = validOn(
    rates.lineDiscounts.filter((each) => each.kind === line.kind),
    job.day,
  );
  if (rate === null) return line;
  const amount = lineAmountMinorUnits(line.quantity, line.unitPriceMinorUnits, line.baseQuantity);
  const discountMinorUnits = percentOfMinorUnits(amount, rate.percent);
  return discountMinorUnits === 0
    ? line
    : { ...line, discountMinorUnits, discountBecause: words.off(decimal(rate.percent), rate.because) };
}
