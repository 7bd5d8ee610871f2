import { z } from 'zod';
import { visitKind } from './job.ts';
import { date, line, minutes, notNegative, percent, price, slug } from './shape.ts';
import { vehicleClass } from './vehicle.ts';

/** Entries may be dated: the one valid on the job's day counts, the later in the list first. */
const validity = { from: date.optional(), to: date.optional() };

const flatRate = z.strictObject({
  visit: visitKind,
  /** absent: any device, any class */
  device: slug.optional(),
  class: vehicleClass.optional(),
  priceMinorUnits: price,
  includedMinutes: minutes.default(0),
  /** price for the n-th job of the same kind on one day: from this many jobs on, each of them costs this */
  tiers: z.array(z.strictObject({ fromQuantity: z.int().min(2).max(1000), priceMinorUnits: price })).default([]),
  ...validity,
});

const hourly = z.strictObject({
  priceMinorUnits: price,
  stepMinutes: z.int().min(1).max(480).default(15),
  rounding: z.enum(['up', 'nearest'], 'must be up or nearest').default('up'),
  /** the least that is charged by the hour on a job that has any hourly work, all its hourly lines together */
  minimumMinutes: minutes.default(0),
  ...validity,
});

const waiting = z.strictObject({
  freeMinutes: minutes.default(0),
  /** absent: the hourly price */
  priceMinorUnits: price.optional(),
  stepMinutes: z.int().min(1).max(480).default(15),
  rounding: z.enum(['up', 'nearest']).default('up'),
  ...validity,
});

const travel = z.strictObject({
  /** for one mile or kilometre, in decimals of the minor unit ("72.5" cents) */
  pricePerDistanceMinorUnits: notNegative,
  unit: z.enum(['mi', 'km']),
  freeDistance: notNegative.default('0'),
  /** for one hour on the road */
  timePriceMinorUnits: price.default(0),
  timeStepMinutes: z.int().min(1).max(480).default(15),
  timeRounding: z.enum(['up', 'nearest']).default('up'),
  freeTravelMinutes: minutes.default(0),
  ...validity,
});

const surcharge = z.strictObject({
  name: line,
  when: z.enum(['out of hours', 'weekend', 'holiday']),
  /** "50" adds half of the flat and hourly price of the minutes that fall in it; of several that fit a minute the highest counts, once */
  percent: notNegative,
  ...validity,
});

const callOut = z.strictObject({
  priceMinorUnits: price,
  visits: z.array(visitKind).default(['service call']),
  ...validity,
});

const extra = z.strictObject({
  id: slug,
  name: line,
  priceMinorUnits: price,
  includedMinutes: minutes.default(0),
  ...validity,
});

const listedPart = z.strictObject({
  id: slug,
  name: line,
  /** whole minor units, or decimals of them in quotes ("38.5" cents for a foot of wire) */
  priceMinorUnits: z.union([price, notNegative], 'must be a whole number of cents, or decimals of them in quotes'),
  ...validity,
});

const clock = z.string().regex(/^([01]\d|2[0-3]):[0-5]\d$/, 'must be a clock time such as 07:00');
const weekday = z.enum(['monday', 'tuesday', 'wednesday', 'thursday', 'friday', 'saturday', 'sunday']);

/** What may be agreed, each part of it absent where nothing is: no default is filled in. */
const agreed = {
  flatRates: z.array(flatRate),
  hourly: z.array(hourly),
  waiting: z.array(waiting),
  callOut: z.array(callOut),
  travel: z.array(travel),
  extras: z.array(extra),
  parts: z.array(listedPart),
  /** on the cost of parts that are not in the list */
  partsMarkUpPercent: notNegative,
  wastedVisit: z.array(z.strictObject({ priceMinorUnits: price, ...validity })),
  surcharges: z.array(surcharge),
  /** ordinary working hours, local clock; what lies outside is out of hours; an end before the start is on the next day, the same as the start is all day */
  ordinaryHours: z.strictObject({ start: clock, end: clock }),
  weekendDays: z.array(weekday),
  holidays: z.array(z.strictObject({ day: date, name: line })),
  /** per kind of line, in percent off ("10") */
  lineDiscounts: z.array(z.strictObject({ kind: line, percent, because: line, ...validity })),
  /** off the whole document */
  documentDiscountPercent: percent,
  documentDiscountBecause: line,
};

/** Prices agreed, for everybody. */
export const rateCard = z.strictObject({
  $schema: z.string().optional(),
  schema: z.literal('keyout-rates-1', 'must be "keyout-rates-1"'),
  flatRates: agreed.flatRates.default([]),
  hourly: agreed.hourly.min(1, 'needs at least one hourly price'),
  waiting: agreed.waiting.default([]),
  callOut: agreed.callOut.default([]),
  travel: agreed.travel.default([]),
  extras: agreed.extras.default([]),
  parts: agreed.parts.default([]),
  partsMarkUpPercent: agreed.partsMarkUpPercent.default('0'),
  wastedVisit: agreed.wastedVisit.default([]),
  surcharges: agreed.surcharges.default([]),
  ordinaryHours: agreed.ordinaryHours.default({ start: '07:00', end: '18:00' }),
  weekendDays: agreed.weekendDays.default(['saturday', 'sunday']),
  holidays: agreed.holidays.default([]),
  lineDiscounts: agreed.lineDiscounts.default([]),
  documentDiscountPercent: agreed.documentDiscountPercent.default('0'),
  documentDiscountBecause: agreed.documentDiscountBecause.optional(),
});
export type RateCard = z.infer<typeof rateCard>;

/** Prices agreed with one payer: laid over the general ones entry by entry. */
export const payerRates = z.strictObject(agreed).partial();
