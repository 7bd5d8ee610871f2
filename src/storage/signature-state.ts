import type { Job } from '../records/job.ts';
import { signedRecordDigest } from './digest.ts';

/**
 * What a job's signature is worth: none; `stands` while the record says what it said when it was signed; `void` once
 * it was changed; `not bound` when it was noted by hand, without a digest of what was signed.
 */
export type SignatureState = 'none' | 'not bound' | 'stands' | 'void';

/** What the signature of a job is worth now. */
export function signatureState(job: Job): SignatureState {
  const { signature } = job;
  if (signature === undefined || signature.answer === 'not available') return 'none';
  if (signature.record === undefined) return 'not bound';
  return signature.record === signedRecordDigest(job) ? 'stands' : 'void';
}

/** Whether a job is signed, and the record still says what was signed. */
export function signatureStands(job: Job): boolean {
  return signatureState(job) === 'stands';
}
