import type { Electrics } from '../electrics/electrics.ts';
import { workOutElectrics } from '../electrics/work-out-electrics.ts';
import { identifyWires } from '../evidence/identify-wires.ts';
import type { Job } from '../records/job.ts';
import { checkJob } from '../rules/check-job.ts';
import type { Finding } from '../rules/finding.ts';
import type { JobFacts } from '../rules/job-facts.ts';
import { openFindings } from '../rules/open-findings.ts';
import { earlierJobs, sameDeviceJobs } from '../storage/jobs.ts';
import type { OpenBook } from '../storage/open-book.ts';
import { photographFiles } from '../storage/photographs.ts';
import { signatureState } from '../storage/signature-state.ts';

/** A job with all that follows from it. */
export type ExaminedJob = {
  readonly job: Job;
  readonly facts: JobFacts;
  readonly findings: readonly Finding[];
  /** findings that still stop the handover */
  readonly open: readonly Finding[];
  readonly electrics: Electrics;
};

/**
 * The evidence, findings and electrics of a job.
 * @param book the open book
 * @param job the job
 */
export async function examineJob(book: OpenBook, job: Job): Promise<ExaminedJob> {
  const profile = book.devices.devices.find((device) => device.id === job.device?.profile) ?? null;
  const payer = job.identity.payer === undefined ? null : (book.payers.get(job.identity.payer) ?? null);
  const facts: JobFacts = {
    job,
    evidence: identifyWires(job, book.book.meters),
    book: book.book,
    profile,
    payer,
    earlier: await earlierJobs(book, job),
    sameDevice: await sameDeviceJobs(book, job),
    photographFiles: await photographFiles(book, job),
    signatureVoid: signatureState(job) === 'void',
  };
  const findings = checkJob(facts);
  return {
    job,
    facts,
    findings,
    open: openFindings(job, findings),
    electrics: workOutElectrics(job, profile, book.book),
  };
}
