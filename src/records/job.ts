import { z } from 'zod';
import { connection, groundPoint } from './connection.ts';
import { harness, placement } from './placement.ts';
import { probePoint } from './probe-point.ts';
import { supplyReading } from './reading.ts';
import { address, date, decimal, line, localTime, minutes, paragraph, price, slug } from './shape.ts';
import { condition, panel, vehicle } from './vehicle.ts';

/** A job's name: its day and four characters without look-alikes, such as "2026-11-24-KX4D". */
export const jobId = z
  .string()
  .regex(
    /^\d{4}-\d{2}-\d{2}-[0-9A-HJ-NP-Z]{4}$/,
    'must be the day and four capital letters or digits, such as "2026-11-24-KX4D"',
  );

export const visitKinds = ['new fit', 'swap', 'removal', 'service call', 'wasted visit'] as const;
export const visitKind = z.enum(visitKinds, `must be one of ${visitKinds.join(', ')}`);

const identity = z.strictObject({
  /** id of a file in payers/ */
  payer: slug.optional(),
  /** who owns or runs the vehicle and signs the sheet */
  customer: z.strictObject({ name: line, contact: line.optional(), address: address.optional() }).optional(),
  place: line.optional(),
  purchaseOrder: line.optional(),
  /** the payer's own reference for the invoice, where it asks for one (EN 16931 BT-10) */
  buyerReference: line.optional(),
  visit: visitKind.optional(),
  installer: line.optional(),
  /** why nothing could be done, on a wasted visit */
  wastedBecause: line.optional(),
});

const fittedDevice = z.strictObject({
  /** id of a profile in devices.json */
  profile: slug,
  serial: line.optional(),
  imei: z
    .string()
    .trim()
    .regex(/^[\d -]{14,22}$/, 'must be the 15 digits on the label')
    .optional(),
  iccid: z
    .string()
    .trim()
    .regex(/^[\d -]{18,30}$/, 'must be the 18 to 22 digits on the card')
    .optional(),
  lampSeen: line.optional(),
  active: z.boolean().optional(),
  /** serial of the device taken out, on a swap or removal */
  removedSerial: line.optional(),
});

const labour = z.strictObject({
  start: localTime.optional(),
  end: localTime.optional(),
  breakMinutes: minutes.default(0),
  waitingMinutes: minutes.default(0),
  waitingBecause: line.optional(),
  /** work outside the flat rate, by the hour */
  hourlyExtras: z
    .array(z.strictObject({ what: line, minutes }))
    .max(40)
    .default([]),
  /** ids of extras of the rate card that were fitted, with how many */
  extras: z
    .array(z.strictObject({ extra: slug, quantity: z.int().min(1).max(1000).default(1) }))
    .max(40)
    .default([]),
});

const part = z.strictObject({
  what: line,
  quantity: decimal.refine((text) => Number(text) > 0, 'must be more than zero'),
  unit: z.enum(['each', 'metre', 'foot', 'set']).default('each'),
  /** cost of one, before mark-up; absent when the rate card sells the part by name */
  unitCostMinorUnits: price.optional(),
  /** id of a part of the rate card, with its price */
  part: slug.optional(),
});

/** What a photograph may show. */
export const photographSubjects = [
  'vehicle',
  'plate',
  'odometer',
  'lamps before',
  'lamps after',
  'joint',
  'fuse',
  'ground',
  'device',
  'panels closed',
  'damage',
  'other',
] as const;

const photograph = z.strictObject({
  /** file name inside the job's photographs folder */
  file: z
    .string()
    .regex(/^[A-Za-z0-9][A-Za-z0-9._-]{0,100}\.(jpe?g|png)$/i, 'must be a plain .jpg or .png file name, no folder'),
  shows: z.enum(photographSubjects),
  caption: line.optional(),
});

/** A drawn stroke: x and y pairs in hundredths of a millimetre. */
const stroke = z.array(z.int().min(0).max(100_000)).min(2).max(4000);

/** What the customer answered to the sheet, or why nobody could. */
export const signature = z.strictObject({
  answer: z.enum(['accepts', 'accepts with remark', 'refuses', 'not available']),
  name: line.optional(),
  signedAt: localTime.optional(),
  remark: line.optional(),
  /** why nobody signed */
  noSignatureBecause: line.optional(),
  /** SHA-256 of exactly what was shown to the signer */
  digest: z
    .string()
    .regex(/^[0-9a-f]{64}$/)
    .optional(),
  /** SHA-256 of what the record said when it was signed, without signature and prices: another one voids the signature */
  record: z
    .string()
    .regex(/^[0-9a-f]{64}$/)
    .optional(),
  strokes: z.array(stroke).max(200).optional(),
  strokesWidth: z.int().min(1).max(100_000).optional(),
  strokesHeight: z.int().min(1).max(100_000).optional(),
  /** file name of a scan filed with the photographs */
  scan: line.optional(),
});

/** The installer's written answer to a finding of severity `reason`. */
const answer = z.strictObject({ rule: slug, at: line.optional(), reason: line });

/** One vehicle on one visit; sections not yet answered are absent. */
export const job = z.strictObject({
  $schema: z.string().optional(),
  schema: z.literal('keyout-job-1', 'must be "keyout-job-1"'),
  id: jobId,
  day: date,
  /** day of the trip file this job belongs to; absent when it has no travel */
  trip: date.optional(),
  identity: identity.prefault({}),
  vehicle: vehicle.prefault({}),
  before: condition.optional(),
  panels: z.array(panel).max(60).optional(),
  supply: z.array(supplyReading).max(60).optional(),
  probePoints: z.array(probePoint).max(40).optional(),
  connections: z.array(connection).max(20).optional(),
  ground: groundPoint.optional(),
  device: fittedDevice.optional(),
  placement: placement.optional(),
  harness: harness.optional(),
  after: condition.optional(),
  photographs: z.array(photograph).max(60).optional(),
  labour: labour.optional(),
  parts: z.array(part).max(100).optional(),
  notes: paragraph.optional(),
  /** ends the interview's questions: how much of the discount agreed on the spot, and money taken on the spot */
  discountPercent: decimal.optional(),
  discountBecause: line.optional(),
  depositMinorUnits: price.optional(),
  answers: z.array(answer).max(60).default([]),
  signature: signature.optional(),
  /** which questions of the interview were answered (also with "nothing"), so that it can go on where it stopped */
  interview: z
    .strictObject({
      answered: z.array(z.string().max(100)).max(2000),
      /** answers of a question that was left half-way, in the order of its prompts */
      draft: z
        .strictObject({ question: z.string().max(100), answers: z.array(z.string().max(20_000)).max(400) })
        .optional(),
    })
    .optional(),
});
export type Job = z.infer<typeof job>;
export type Signature = z.infer<typeof signature>;
/** A job as a person may write it: defaults left out. */
export type JobInput = z.input<typeof job>;
