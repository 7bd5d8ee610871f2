import { readFileSync } from 'node:fs';
import path from 'node:path';
import { Problem } from '../problem.ts';
import type { Job, Signature } from '../records/job.ts';
import { sha256, signedRecordDigest } from './digest.ts';
import { readJob, writeJob } from './jobs.ts';
import { appendLedger, readLedger } from './ledger.ts';
import type { OpenBook } from './open-book.ts';
import { photographFolder } from './photographs.ts';
import { writeAtomically } from './write-atomically.ts';

/** Who signed what, and the file that proves it. */
export type NewSignature = {
  /** the job as it was shown, with the signature it had then, if any */
  readonly job: Job;
  /** `digest`, `record` and `scan` are added when it is filed */
  readonly signature: Omit<Signature, 'digest' | 'record' | 'scan'>;
  /** SHA-256 of exactly what was shown to the signer */
  readonly digest: string;
  /** the words shown, or the scan of the sheet signed with a pen */
  readonly proof: { readonly kind: 'shown' | 'scan'; readonly ending: string; readonly bytes: Uint8Array };
};

/** The moment of writing, UTC, and the day in the business's own zone. */
export type SigningMoment = { readonly now: string; readonly day: string };

/**
 * Files a signature: its proof beside the photographs, the signature in the job, a line in the ledger.
 * @param open the open book
 * @param signed who signed what
 * @param moment now and today
 * @returns the job as it stands now
 * @throws Problem when the job was changed after it was shown
 */
export function recordSignature(open: OpenBook, signed: NewSignature, moment: SigningMoment): Job {
  const record = signedRecordDigest(signed.job);
  const now = readJob(open, signed.job.id);
  if (signedRecordDigest(now) !== record)
    throw new Problem(
      'The job was changed after the sheet was shown; nothing was signed.',
      signed.job.id,
      'Show the sheet again with `keyout sign`.',
      1,
    );
  if (JSON.stringify(now.signature) !== JSON.stringify(signed.job.signature))
    throw new Problem(
      `The job was signed elsewhere meanwhile (${now.signature?.name ?? 'no name'}); this signature is not kept.`,
      signed.job.id,
      'Look at the other one; `keyout sign --again` has it signed anew.',
      1,
    );
  const name = `${signed.proof.kind}-${sha256(signed.proof.bytes).slice(0, 16)}.${signed.proof.ending}`;
  writeAtomically(path.join(open.folder, photographFolder(now), name), signed.proof.bytes);
  const scan = signed.proof.kind === 'scan' ? { scan: name } : {};
  const job: Job = { ...now, signature: { ...signed.signature, digest: signed.digest, record, ...scan } };
  writeJob(open, job);
  enterSignature(open, job, moment);
  return job;
}

/**
 * Enters a job's signature in the ledger unless it stands there: also what a stop before the entry left out.
 * @param open the open book
 * @param job a signed job
 * @param moment now and today
 */
export function enterSignature(open: OpenBook, job: Job, moment: SigningMoment): void {
  const { signature } = job;
  if (signature?.digest === undefined || signature.record === undefined) return;
  const last = readLedger(open).findLast((entry) => entry.event === 'signed' && entry.job === job.id);
  if (last?.event === 'signed' && last.digest === signature.digest && last.answer === signature.answer) return;
  const proof = path.join(photographFolder(job), signature.scan ?? `shown-${signature.digest.slice(0, 16)}.txt`);
  appendLedger(open, {
    event: 'signed',
    written: moment.now,
    day: moment.day,
    job: job.id,
    answer: signature.answer,
    digest: signature.digest,
    files: [{ path: proof, sha256: sha256(readFileSync(path.join(open.folder, proof))) }],
  });
}

/**
 * The digest of the sheet of a job that was printed last, or null when none was or the record has changed since.
 * @param open the open book
 * @param job the job
 */
export function printedSheetDigest(open: OpenBook, job: Job): string | null {
  const printed = readLedger(open).findLast((entry) => entry.event === 'handed over' && entry.job === job.id);
  if (printed?.event !== 'handed over' || printed.record !== signedRecordDigest(job)) return null;
  return printed.files[0]?.sha256 ?? null;
}
