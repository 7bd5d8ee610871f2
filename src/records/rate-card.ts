import { z } from 'zod';
import { visitKind } from './job.ts';
import { date, decimal, line, minutes, percent, price, slug } from './shape.ts';
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
  pricePerDistanceMinorUnits: decimal,
  unit: z.enum(['mi', 'km']),
  freeDistance: decimal.default('0'),
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
  /** "50" adds half of the hourly or pro-rated flat price of the minutes that fall in it */
  percent: decimal,
  ...validity,
});

/** Prices agreed, for everybody or for one payer. */
export const rateCard = z.strictObject({
  $schema: z.string().optional(),
  schema: z.literal('keyout-rates-1', 'must be "keyout-rates-1"'),
  flatRates: z.array(flatRate).default([]),
  hourly: z.array(hourly).min(1, 'needs at least one hourly price'),
  waiting: z.array(waiting).default([]),
  callOut: z
    .array(
      z.strictObject({ priceMinorUnits: price, visits: z.array(visitKind).default(['service call']), ...validity }),
    )
    .default([]),
  travel: z.array(travel).default([]),
  extras: z
    .array(
      z.strictObject({
        id: slug,
        name: line,
        priceMinorUnits: price,
        includedMinutes: minutes.default(0),
        ...validity,
      }),
    )
    .default([]),
  parts: z.array(z.strictObject({ id: slug, name: line, priceMinorUnits: price, ...validity })).default([]),
  partsMarkUpPercent: decimal.default('0'),
  wastedVisit: z.array(z.strictObject({ priceMinorUnits: price, ...validity })).default([]),
  surcharges: z.array(surcharge).default([]),
  /** ordinary working hours, local clock; what lies outside is out of hours */
  ordinaryHours: z
    .strictObject({
      start: z.string().regex(/^([01]\d|2[0-3]):[0-5]\d$/, 'must be a clock time such as 07:00'),
      end: z.string().regex(/^([01]\d|2[0-3]):[0-5]\d$/, 'must be a clock time such as 18:00'),
    })
    .default({ start: '07:00', end: '18:00' }),
  holidays: z.array(z.strictObject({ day: date, name: line })).default([]),
  /** per kind of line, in percent off ("10") */
  lineDiscounts: z.array(z.strictObject({ kind: line, percent, because: line, ...validity })).default([]),
  /** off the whole document */
  documentDiscountPercent: percent.default('0'),
  documentDiscountBecause: line.optional(),
});
export type RateCard = z.infer<typeof rateCard>;
