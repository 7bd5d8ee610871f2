import { z } from 'zod';
import { language } from './language.ts';
import { electronicAddress } from './payer.ts';
import { address, date, decimal, line, paragraph, percent, slug } from './shape.ts';

/** What a meter can tell: accuracy as ± percent of reading + digits, as printed in its manual. */
export const meterProfile = z.strictObject({
  id: slug,
  name: line,
  accuracyPercent: z.number().min(0).max(10),
  accuracyDigits: z.int().min(0).max(50),
  /** volts that the last digit stands for, per range upper end (a 20 V range of 10 mV: {"toVolts": 20, "digitVolts": 0.01}) */
  ranges: z.array(z.strictObject({ toVolts: z.number().positive(), digitVolts: z.number().positive().max(1) })).min(1),
  inputMegohms: z.number().positive().default(10),
});
export type MeterProfile = z.infer<typeof meterProfile>;

/** Tax categories of UN/EDIFACT 5305 as used by EN 16931. */
export const taxCategories = ['S', 'Z', 'E', 'AE', 'K', 'G', 'O'] as const;

const taxCode = z.strictObject({
  id: slug,
  name: line,
  category: z.enum(taxCategories, `must be one of ${taxCategories.join(', ')}`),
  /** one for a VAT or GST rate; several add up (state, county, city); none for categories without a rate */
  jurisdictions: z.array(z.strictObject({ name: line, ratePercent: percent })).default([]),
  /** printed where the category needs one (E, AE, K, G, O) */
  reason: line.optional(),
  /** VATEX code (BT-121) */
  reasonCode: line.optional(),
  from: date.optional(),
  to: date.optional(),
});
export type TaxCode = z.infer<typeof taxCode>;

/** Kinds of invoice lines, each of which may be taxed and booked differently. */
export const lineKinds = [
  'flat rate',
  'extra',
  'labour',
  'waiting',
  'call-out',
  'wasted visit',
  'travel distance',
  'travel time',
  'tolls and parking',
  'parts',
  'surcharge',
] as const;
export const lineKind = z.enum(lineKinds, `must be one of ${lineKinds.join(', ')}`);
export type LineKind = z.infer<typeof lineKind>;

const series = z.strictObject({
  prefix: z
    .string()
    .regex(/^[A-Z][A-Z0-9-]{0,15}$/, 'must begin with a capital letter, then capitals, digits, hyphens'),
  digits: z.int().min(1).max(10).default(4),
  /** true: numbers begin at 1 each year and carry the year (INV-2026-0001) */
  yearly: z.boolean().default(false),
  /** the first number of the series, where a business goes on from its earlier books */
  start: z.int().min(1).max(999_999_999).default(1),
});
/** A number series. */
export type NumberSeries = z.infer<typeof series>;

const numbering = z
  .strictObject({
    invoice: series,
    creditNote: series,
    /** vans that issue on their own, each with a series that no other uses: two machines that cannot see each other never share a number */
    vans: z.array(z.strictObject({ id: slug, invoice: series, creditNote: series })).default([]),
  })
  .superRefine((given, context) => {
    const all = [given, ...given.vans].flatMap((each) => [each.invoice, each.creditNote]);
    for (const [first, one] of all.entries())
      for (const [second, other] of all.entries()) {
        const sameOwner = Math.trunc(first / 2) === Math.trunc(second / 2);
        if (first === second || (sameOwner && JSON.stringify(one) === JSON.stringify(other))) continue;
        if (other.prefix.startsWith(one.prefix) && /^[\d-]*$/.test(other.prefix.slice(one.prefix.length)))
          context.addIssue({
            code: 'custom',
            message: `has two series whose numbers could be the same: prefixes "${one.prefix}" and "${other.prefix}"`,
          });
      }
  });

/** The business: asked once, changed any time. */
export const book = z.strictObject({
  $schema: z.string().optional(),
  schema: z.literal('keyout-book-1', 'must be "keyout-book-1"'),
  business: z.strictObject({
    name: line,
    installer: line,
    address,
    phone: line.optional(),
    email: line.optional(),
    website: line.optional(),
    /** VAT or GST number with its country prefix (BT-31) */
    taxIdentifier: line.optional(),
    /** other tax registration, such as a state sales tax permit (BT-32) */
    taxRegistration: line.optional(),
    /** company register number (BT-30) */
    companyIdentifier: line.optional(),
    electronicAddress: electronicAddress.optional(),
    /** file inside the book's folder: PNG, JPEG */
    logo: z
      .string()
      .regex(
        /^[A-Za-z0-9][A-Za-z0-9._-]*\.(png|jpe?g|svg)$/i,
        'must be a plain .png, .jpg or .svg file name in the book folder',
      )
      .optional(),
  }),
  locale: z
    .string()
    .regex(/^[a-z]{2}(-[A-Z]{2})?$/, 'must be a language and country such as "en-US"')
    .default('en-US'),
  language: language.default('en'),
  currency: z.string().regex(/^[A-Z]{3}$/, 'must be a three-letter currency code (ISO 4217), such as "USD"'),
  timeZone: z.string().regex(/^[A-Za-z_]+(\/[A-Za-z0-9_+-]+){0,2}$/, 'must be a time zone such as "America/Denver"'),
  paper: z.enum(['letter', 'a4'], 'must be letter or a4').default('letter'),
  units: z
    .strictObject({ distance: z.enum(['mi', 'km']), length: z.enum(['in', 'mm']) })
    .default({ distance: 'mi', length: 'in' }),
  accent: z
    .string()
    .regex(/^#[0-9a-fA-F]{6}$/, 'must be a colour such as "#1f4e5f"')
    .default('#1f4e5f'),
  tax: z.strictObject({
    regime: z.enum(['none', 'sales tax', 'VAT', 'GST']),
    pricesInclude: z.boolean().default(false),
    codes: z.array(taxCode).default([]),
    /** which code each kind of line has; `default` for those not named */
    lines: z.partialRecord(z.union([lineKind, z.literal('default')]), slug).default({}),
  }),
  numbering,
  payment: z.strictObject({
    termsDays: z.int().min(0).max(365).default(30),
    accountName: line.optional(),
    bank: line.optional(),
    iban: line.optional(),
    bic: line.optional(),
    accountNumber: line.optional(),
    routingNumber: line.optional(),
    /** the business's own payment page; {number} and {amount} are filled in */
    link: z
      .string()
      .regex(/^https:\/\/[^\s]+$/, 'must begin with https://')
      .optional(),
    earlyPayment: z.strictObject({ percent, withinDays: z.int().min(1).max(90) }).optional(),
    lateInterest: line.optional(),
    terms: paragraph.optional(),
  }),
  meters: z.array(meterProfile).default([]),
  /** ledger accounts for the journal export */
  accounts: z
    .strictObject({
      receivable: line.default('1200'),
      bank: line.default('1000'),
      tax: line.default('2200'),
      rounding: line.default('4990'),
      deposits: line.default('2300'),
      /** what payers have paid or been credited beyond their invoices */
      customerCredit: line.default('2310'),
      /** discounts on a whole document; absent: the default income account */
      discounts: line.optional(),
      income: z.partialRecord(z.union([lineKind, z.literal('default')]), line).default({ default: '4000' }),
    })
    .prefault({}),
  /** the vehicle's own current asleep, assumed where not measured */
  assumedAsleepMilliamps: decimal.default('20'),
  /** days a vehicle must be able to stand, where the job does not say */
  standingDaysMin: z.int().min(0).max(365).default(21),
});
export type Book = z.infer<typeof book>;
