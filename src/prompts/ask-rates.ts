import { currencyDigits } from '../quantities/currency-digits.ts';
import { majorText } from '../quantities/major-units.ts';
import type { Book } from '../records/book.ts';
import { visitKinds } from '../records/job.ts';
import type { RateCard } from '../records/rate-card.ts';
import { rateCard } from '../records/rate-card.ts';
import { amountOf, amountOrNothing, numberOf, numberOrNothing, something, whole } from './answers.ts';
import { shortName } from './ask-payer.ts';
import type { Ask } from './question.ts';

const fixedVisits = visitKinds.filter((visit) => visit !== 'wasted visit' && visit !== 'service call');

async function price(message: string, usual: number | undefined, currency: string, ask: Ask): Promise<number | null> {
  const text = await ask.text(
    `${message}, ${currency}`,
    usual === undefined ? '' : majorText(usual, currencyDigits(currency)),
    amountOrNothing(currency),
  );
  return text === '' ? null : amountOf(text, currency);
}

const minutesOf = async (message: string, usual: number, ask: Ask) =>
  Number(await ask.text(message, String(usual), whole));

/** Flat rates of the three fixed visits; entries for one device or class are kept as they are. */
async function askFlatRates(ask: Ask, current: RateCard | null, currency: string): Promise<RateCard['flatRates']> {
  const special = (current?.flatRates ?? []).filter(
    (rate) => rate.device !== undefined || rate.class !== undefined || rate.from !== undefined || rate.to !== undefined,
  );
  const general: RateCard['flatRates'] = [];
  for (const visit of fixedVisits) {
    const before = current?.flatRates.find((rate) => rate.visit === visit && !special.includes(rate));
    const amount = await price(`Flat rate for a ${visit} (empty: by the hour)`, before?.priceMinorUnits, currency, ask);
    if (amount === null) continue;
    const includedMinutes = await minutesOf('with this many minutes included', before?.includedMinutes ?? 60, ask);
    general.push({ ...before, visit, priceMinorUnits: amount, includedMinutes, tiers: before?.tiers ?? [] });
  }
  return [...general, ...special];
}

async function askParts(ask: Ask, current: RateCard | null, currency: string): Promise<RateCard['parts']> {
  const parts = [...(current?.parts ?? [])];
  for (;;) {
    const name = await ask.text('A part you sell: its name (empty when no more)', '');
    if (name === '') return parts;
    const amount = await price('Its price', undefined, currency, ask);
    const id = shortName(
      name,
      parts.map((part) => part.id),
    );
    parts.push({ id, name, priceMinorUnits: amount ?? 0 });
  }
}

async function askTravel(
  ask: Ask,
  current: RateCard | null,
  book: Pick<Book, 'currency' | 'units'>,
): Promise<RateCard['travel']> {
  const before = current?.travel[0];
  const unit = book.units.distance;
  const usual = before === undefined ? '' : before.pricePerDistanceMinorUnits;
  const smallest = await ask.text(
    `Price of one ${unit}, in the smallest unit of ${book.currency} (72.5 cents: 72.5; empty: travel is not charged)`,
    usual,
    numberOrNothing,
  );
  if (smallest === '') return [];
  const free = await ask.text(
    `${unit} of a trip that are free`,
    before?.freeDistance ?? '0',
    (text) => something(text) ?? numberOrNothing(text),
  );
  const hour = await price('Price of an hour on the road', before?.timePriceMinorUnits ?? 0, book.currency, ask);
  const step = await minutesOf('Travel time in steps of minutes', before?.timeStepMinutes ?? 15, ask);
  return [
    {
      freeTravelMinutes: 0,
      timeRounding: 'nearest',
      ...before,
      pricePerDistanceMinorUnits: String(numberOf(smallest)),
      unit,
      freeDistance: String(numberOf(free)),
      timePriceMinorUnits: hour ?? 0,
      timeStepMinutes: Math.max(1, step),
    },
  ];
}

/**
 * The rate card for everybody: flat rates, the hour, waiting, travel, parts, wasted visit. Dated and special entries already in the card are kept.
 * @param ask how a prompt reaches a person
 * @param current the card as it is, or null when it begins
 * @param book currency and units
 */
export async function askRates(
  ask: Ask,
  current: RateCard | null,
  book: Pick<Book, 'currency' | 'units'>,
): Promise<RateCard> {
  const { currency } = book;
  const flatRates = await askFlatRates(ask, current, currency);
  const hourBefore = current?.hourly[0];
  const hour = await ask.text(
    `Price of an hour’s work, ${currency}`,
    hourBefore === undefined ? '' : majorText(hourBefore.priceMinorUnits, currencyDigits(currency)),
    (text) => something(text) ?? amountOrNothing(currency)(text),
  );
  const step = await minutesOf('counted in steps of minutes', hourBefore?.stepMinutes ?? 15, ask);
  const rounding = await ask.choose('each begun step is rounded', ['up', 'nearest'], hourBefore?.rounding ?? 'up');
  const waitBefore = current?.waiting[0];
  const free = await minutesOf('Minutes of waiting that are free', waitBefore?.freeMinutes ?? 15, ask);
  const wait = await price('Price of an hour’s waiting (empty: as work)', waitBefore?.priceMinorUnits, currency, ask);
  const call = await price(
    'Call-out for a service call (empty for none)',
    current?.callOut[0]?.priceMinorUnits,
    currency,
    ask,
  );
  const wasted = await price('Wasted visit (empty for none)', current?.wastedVisit[0]?.priceMinorUnits, currency, ask);
  const travel = await askTravel(ask, current, book);
  const parts = await askParts(ask, current, currency);
  return rateCard.parse({
    ...current,
    schema: 'keyout-rates-1',
    flatRates,
    hourly: [
      { ...hourBefore, priceMinorUnits: amountOf(hour, currency) ?? 0, stepMinutes: Math.max(1, step), rounding },
      ...(current?.hourly.slice(1) ?? []),
    ],
    waiting: [
      { ...waitBefore, freeMinutes: free, ...(wait === null ? {} : { priceMinorUnits: wait }) },
      ...(current?.waiting.slice(1) ?? []),
    ],
    callOut:
      call === null ? [] : [{ ...current?.callOut[0], priceMinorUnits: call }, ...(current?.callOut.slice(1) ?? [])],
    wastedVisit:
      wasted === null
        ? []
        : [{ ...current?.wastedVisit[0], priceMinorUnits: wasted }, ...(current?.wastedVisit.slice(1) ?? [])],
    travel: [...travel, ...(current?.travel.slice(1) ?? [])],
    parts,
  });
}
