import { existsSync, readFileSync } from 'node:fs';
import path from 'node:path';
import type { Job } from '../records/job.ts';
import { sha256, signedRecordDigest } from './digest.ts';
import { appendLedger, readLedger } from './ledger.ts';
import type { OpenBook } from './open-book.ts';
import { writeAtomically } from './write-atomically.ts';

/**
 * Writes a handover sheet into out/ and notes it in the ledger; the same sheet again changes nothing.
 * @param open the open book
 * @param sheet the job, the digest of its record, the PDF, the moment and the day
 * @returns the sheet's path inside the book
 */
export function recordHandedOver(
  open: OpenBook,
  sheet: {
    readonly job: Job;
    readonly digest: string;
    readonly pdf: Uint8Array;
    readonly now: string;
    readonly day: string;
  },
): string {
  const place = path.join('out', sheet.job.day, `${sheet.job.id}-handover.pdf`);
  const file = path.join(open.folder, place);
  const sheetDigest = sha256(sheet.pdf);
  if (!existsSync(file) || sha256(readFileSync(file)) !== sheetDigest) writeAtomically(file, sheet.pdf);
  const last = readLedger(open).findLast((entry) => entry.event === 'handed over' && entry.job === sheet.job.id);
  const known = last?.event === 'handed over' && last.digest === sheet.digest;
  if (!known || !last.files.some((each) => each.path === place && each.sha256 === sheetDigest)) {
    appendLedger(open, {
      event: 'handed over',
      written: sheet.now,
      day: sheet.day,
      job: sheet.job.id,
      digest: sheet.digest,
      record: signedRecordDigest(sheet.job),
      files: [{ path: place, sha256: sheetDigest }],
    });
  }
  return place;
}
