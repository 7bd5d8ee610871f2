import type { Evidence } from '../evidence/evidence.ts';
import type { Book } from '../records/book.ts';
import type { DeviceProfile } from '../records/device-profile.ts';
import type { Job } from '../records/job.ts';
import type { Payer } from '../records/payer.ts';

/** What a rule may look at. Everything is data; nothing is read while checking. */
export type JobFacts = {
  readonly job: Job;
  readonly evidence: Evidence;
  readonly book: Book;
  /** null when the job names no device yet */
  readonly profile: DeviceProfile | null;
  readonly payer: Payer | null;
  /** earlier jobs on the same vehicle (by VIN, else plate), oldest first */
  readonly earlier: readonly Job[];
  /** other jobs that fitted a device of the same serial or IMEI, or took it out */
  readonly sameDevice: readonly Job[];
  /** names of the photographs that exist in the job's folder */
  readonly photographFiles: readonly string[];
  /** true when the record says something else than when it was signed */
  readonly signatureVoid?: boolean;
};
