import { z } from 'zod';
import { jobId } from './job.ts';
import { date, line, minorUnits, price } from './shape.ts';

const sha256 = z.string().regex(/^[0-9a-f]{64}$/, 'must be a SHA-256 in hexadecimal');
/** A file the entry speaks of, by its path inside the book, with its digest. */
const files = z.array(z.strictObject({ path: z.string(), sha256 }));
const chained = {
  /** 1 for the first line of the ledger */
  sequence: z.int().min(1),
  /** digest of the line before; zeros for the first */
  previous: sha256,
  /** moment of writing, UTC */
  written: z.string().regex(/^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}:\d{2}Z$/),
  day: date,
};

/** The place of a number in its series: what stands before the counting digits, and the count. */
const place = z.strictObject({ stem: line, place: z.int().min(1) }).optional();

/** What the document adds to a balance or takes off it, rounding included; absent: its gross amount. */
const owed = price.optional();

/** One line of ledger.jsonl. */
export const ledgerEntry = z.discriminatedUnion('event', [
  z.strictObject({
    event: z.literal('issued'),
    ...chained,
    number: line,
    series: place,
    jobs: z.array(jobId),
    payer: line,
    grossMinorUnits: price,
    owedMinorUnits: owed,
    files,
  }),
  z.strictObject({
    event: z.literal('credited'),
    ...chained,
    number: line,
    series: place,
    invoice: line,
    grossMinorUnits: price,
    owedMinorUnits: owed,
    files,
  }),
  z.strictObject({
    event: z.literal('paid'),
    ...chained,
    payment: line,
    payer: line,
    currency: z
      .string()
      .regex(/^[A-Z]{3}$/)
      .optional(),
    /** negative: money given back, or a payment taken back that was recorded by mistake; zero: a payer's credit is used */
    amountMinorUnits: minorUnits,
    method: line,
    reference: line.optional(),
    /** negative: credit moved off an invoice that was paid or credited beyond what it charged */
    allocations: z.array(z.strictObject({ invoice: line, amountMinorUnits: minorUnits })),
    /** the payment that this entry takes back, and why */
    reverses: line.optional(),
    because: line.optional(),
    files,
  }),
  z.strictObject({
    event: z.literal('handed over'),
    ...chained,
    job: jobId,
    digest: sha256,
    /** digest of what a signature on this sheet would stand for */
    record: sha256.optional(),
    files,
  }),
  z.strictObject({ event: z.literal('signed'), ...chained, job: jobId, answer: line, digest: sha256, files }),
]);
export type LedgerEntry = z.infer<typeof ledgerEntry>;

/** How many lines the ledger has, and the digest of the last: no later line guards the last one. */
export const ledgerHead = z.strictObject({ lines: z.int().min(1), last: sha256 });
export type LedgerHead = z.infer<typeof ledgerHead>;
