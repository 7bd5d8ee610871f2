import { decimalScale, decimalText, lineAmountMinorUnits, millionths } from '../quantities/decimal.ts';
import { divideRounded } from '../quantities/divide-rounded.ts';
import { writeMoney } from '../quantities/write-money.ts';
import type { Book } from '../records/book.ts';
import type { Job } from '../records/job.ts';
import type { RateCard } from '../records/rate-card.ts';
import { classifyDay, classifyMinutes, type Stretch } from './classify-minutes.ts';
import { validOn } from './effective-rates.ts';
import { oneOf, type PricedLine } from './priced-line.ts';
import { workSpan, writeMinutes } from './work-minutes.ts';

type Surcharge = RateCard['surcharges'][number];

// in the order in which a tie between equal percentages is settled
const occasions = ['holiday', 'weekend', 'out of hours'] as const;

function appliesTo(when: Surcharge['when'], told: Stretch): boolean {
  if (when === 'holiday') return told.holiday;
  return when === 'weekend' ? told.weekend : told.outOfHours;
}

function stretchesOf(job: Job, rates: RateCard, timeZone: string): readonly Stretch[] {
  const span = workSpan(job, timeZone);
  return span === null
    ? [{ ...classifyDay(job.day, rates), outOfHours: false, minutes: 1 }]
    : classifyMinutes(span, rates, timeZone);
}

function saidOf(when: Surcharge['when'], rates: RateCard, job: Job): string {
  if (when === 'out of hours') return `outside ${rates.ordinaryHours.start} to ${rates.ordinaryHours.end}`;
  if (when === 'weekend') return 'on a weekend';
  const name = rates.holidays.find((each) => each.day === job.day)?.name;
  return name === undefined ? 'on a holiday' : `on a holiday (${name})`;
}

/**
 * Surcharges for work out of hours, on weekends and on holidays.
 * The price of the work (flat rate and labour; not waiting, travel, extras or parts) is spread evenly over the time from
 * start to end, since breaks are not recorded by the clock; of the surcharges that fit a minute the highest counts, once.
 * Where no times are recorded, only the day can tell: weekend and holiday then count for the whole visit.
 * Common practice, no source.
 * @param job the job
 * @param work its lines of the kinds flat rate and labour
 * @param rates the rate card that counts
 * @param book currency, locale and time zone of the business
 */
export function surchargeLines(
  job: Job,
  work: readonly PricedLine[],
  rates: RateCard,
  book: Book,
): readonly PricedLine[] {
  const valid = occasions.flatMap((when) => {
    const found = validOn(
      rates.surcharges.filter((each) => each.when === when),
      job.day,
    );
    return found === null || millionths(found.percent) === 0n ? [] : [found];
  });
  if (valid.length === 0) return [];
  const base = work.reduce(
    (sum, line) => sum + lineAmountMinorUnits(line.quantity, line.unitPriceMinorUnits, line.baseQuantity),
    0,
  );
  const stretches = stretchesOf(job, rates, book.timeZone);
  const all = stretches.reduce((sum, each) => sum + each.minutes, 0);
  const minutes = new Map<Surcharge, number>();
  for (const stretch of stretches) {
    const fits = valid.filter((each) => appliesTo(each.when, stretch));
    const highest = fits.reduce<Surcharge | null>(
      (best, each) => (best !== null && millionths(best.percent) >= millionths(each.percent) ? best : each),
      null,
    );
    if (highest !== null) minutes.set(highest, (minutes.get(highest) ?? 0) + stretch.minutes);
  }
  const timed = job.labour?.start !== undefined && job.labour.end !== undefined;
  return valid.flatMap((each) => {
    const within = minutes.get(each) ?? 0;
    const amount = Number(
      divideRounded(
        BigInt(base) * millionths(each.percent) * BigInt(within),
        100n * decimalScale * BigInt(Math.max(1, all)),
      ),
    );
    if (amount === 0) return [];
    const share = timed ? `${writeMinutes(within)} of ${writeMinutes(all)} ` : 'the whole visit ';
    const because = `${share}${saidOf(each.when, rates, job)}: ${decimalText(millionths(each.percent))} % of ${within === all ? '' : 'that share of '}${writeMoney(base, book.currency, book.locale)}`;
    return [oneOf('surcharge', each.name, amount, because)];
  });
}
