import { createHash } from 'node:crypto';
import { type Job, job } from '../records/job.ts';
import { withoutDefaults } from '../records/without-defaults.ts';

/** SHA-256 of text or bytes, in hexadecimal. */
export function sha256(content: string | Uint8Array): string {
  return createHash('sha256').update(content).digest('hex');
}

function sorted(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(sorted);
  if (value === null || typeof value !== 'object') return value;
  return Object.fromEntries(
    Object.entries(value)
      .filter(([, each]) => each !== undefined)
      .sort(([one], [other]) => (one < other ? -1 : 1))
      .map(([name, each]) => [name, sorted(each)]),
  );
}

/**
 * The digest of a job's record, whatever the order of its fields. What the interview remembers of itself does not count,
 * nor do values that the schema fills in: a later version of this program finds the same digest.
 */
export function recordDigest(record: Job): string {
  const { interview: _interview, $schema: _schema, ...rest } = record;
  return sha256(JSON.stringify(sorted(withoutDefaults(job, rest))));
}

/**
 * The digest of what a signature stands for: all that the sheet can show. The signature itself, and what only the
 * invoice uses (trip, hours, parts, discount, money taken), do not count. Values that the schema fills in do not count
 * either, so that a signature outlives later versions of this program.
 */
export function signedRecordDigest(record: Job): string {
  const {
    $schema: _schema,
    interview: _interview,
    signature: _signature,
    trip: _trip,
    labour: _labour,
    parts: _parts,
    discountPercent: _discountPercent,
    discountBecause: _discountBecause,
    depositMinorUnits: _depositMinorUnits,
    ...shown
  } = record;
  return sha256(JSON.stringify(sorted(withoutDefaults(job, shown))));
}
