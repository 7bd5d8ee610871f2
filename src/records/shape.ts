import { z } from 'zod';
import { isCalendarDate } from '../quantities/calendar-date.ts';

/** Free text of one line, as a person types it; never empty. */
export const line = z
  .string('must be text')
  .trim()
  .min(1, 'must not be empty')
  .max(200, 'must be at most 200 characters')
  .regex(/^[^\p{Cc}]*$/u, 'must be one line without control characters');

/** Free text of several lines. */
export const paragraph = z.string('must be text').trim().max(20_000, 'must be at most 20,000 characters');

/** A date that exists, `YYYY-MM-DD`. */
export const date = z
  .string('must be a date such as 2026-11-24')
  .refine(isCalendarDate, 'must be a date that exists, written like 2026-11-24');

/** A local wall-clock moment, `YYYY-MM-DDTHH:MM`, in the business's own zone. */
export const localTime = z
  .string('must be a time such as 2026-11-24T08:30')
  .regex(/^\d{4}-\d{2}-\d{2}T([01]\d|2[0-3]):[0-5]\d$/, 'must be a local time written like 2026-11-24T08:30')
  .refine((text) => isCalendarDate(text.slice(0, 10)), 'must be on a date that exists');

/** A short name that is also a file name: small letters, digits, hyphens. */
export const slug = z
  .string('must be a short name')
  .regex(
    /^[a-z0-9](?:[a-z0-9-]{0,62}[a-z0-9])?$/,
    'must be a short name of small letters, digits and hyphens, such as "north-fleet"',
  );

/** An amount of money in the currency's minor unit (cents, pence, yen): a whole number. */
export const minorUnits = z
  .int("must be a whole number of the currency's smallest unit (cents): 8500 means 85.00")
  .min(-1_000_000_000_000, 'is out of range')
  .max(1_000_000_000_000, 'is out of range');

/** An amount of money that cannot be negative. */
export const price = minorUnits.min(0, 'must not be negative');

/** A decimal number kept as text so that no digit is lost ("8.875"). */
export const decimal = z
  .string('must be a number in quotes, such as "8.875"')
  .regex(/^-?\d{1,12}(\.\d{1,6})?$/, 'must be a plain decimal number in quotes, at most six decimals, such as "8.875"');

/** A decimal that cannot be negative. */
export const notNegative = decimal.refine((text) => !text.startsWith('-'), 'must not be negative');

/** A percentage as decimal text, zero to one hundred. */
export const percent = decimal.refine((text) => Number(text) >= 0 && Number(text) <= 100, 'must be between 0 and 100');

/** Whole minutes. */
export const minutes = z
  .int('must be a whole number of minutes')
  .min(0, 'must not be negative')
  .max(10_080, 'must be at most a week');

/** Volts as a meter shows them. */
export const volts = z
  .number('must be a number of volts such as 12.62')
  .min(-60, 'must be between -60 and 60 volts: only 12 V and 24 V systems are measured')
  .max(60, 'must be between -60 and 60 volts: only 12 V and 24 V systems are measured');

/** A length in whole millimetres. */
export const millimetres = z
  .int('must be a whole number of millimetres')
  .min(0, 'must not be negative')
  .max(50_000, 'must be at most 50 m');

/** A postal address. */
export const address = z.strictObject({
  lines: z.array(line).min(1, 'needs at least one line (street)').max(4, 'must be at most four lines'),
  city: line,
  region: line.optional(),
  postcode: line.optional(),
  country: z.string().regex(/^[A-Z]{2}$/, 'must be a two-letter country code (ISO 3166-1), such as "US"'),
});
