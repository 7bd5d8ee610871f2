import { decimalScale, decimalText, lineAmountMinorUnits, millionths } from '../quantities/decimal.ts';
import { divideRounded } from '../quantities/divide-rounded.ts';
import type { Job } from '../records/job.ts';
import type { RateCard } from '../records/rate-card.ts';
import { classifyDay, classifyMinutes, type Stretch } from './classify-minutes.ts';
import { validOn } from './effective-rates.ts';
import { oneOf, type PricedLine } from './priced-line.ts';
import type { Setting } from './setting.ts';
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

function saidOf(when: Surcharge['when'], rates: RateCard, job: Job, { words }: Setting): string {
  if (when === 'out of hours') return words.outside(rates.ordinaryHours.start, rates.ordinaryHours.end);
  if (when === 'weekend') return words.onWeekend;
  return words.onHoliday(rates.holidays.find((each) => each.day === job.day)?.name ?? '');
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
 * @param setting the business's time zone, and in which words
 */
export function surchargeLines(
  job: Job,
  work: readonly PricedLine[],
  rates: RateCard,
  setting: Setting,
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
  const stretches = stretchesOf(job, rates, setting.timeZone);
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
    const { words, money, decimal } = setting;
    const share = timed ? words.timeOf(writeMinutes(within), writeMinutes(all)) : words.wholeVisit;
    const occasion = saidOf(each.when, rates, job, setting);
    const percent = decimal(decimalText(millionths(each.percent)));
    const because = words.surcharge(share, occasion, percent, money(base), within === all);
    return [oneOf('surcharge', each.name, amount, because)];
  });
}
