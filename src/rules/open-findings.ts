import type { Job } from '../records/job.ts';
import type { Finding } from './finding.ts';

/** The installer's written reason for a finding, or null. */
export function reasonGiven(job: Job, finding: Finding): string | null {
  const own = job.answers.filter((answer) => answer.rule === finding.rule);
  return (
    (own.find((answer) => answer.at === finding.at) ?? own.find((answer) => answer.at === undefined))?.reason ?? null
  );
}

/**
 * The findings that still stop the handover: every block, and each reason without a written answer.
 * @param job the job
 * @param findings all findings
 */
export function openFindings(job: Job, findings: readonly Finding[]): readonly Finding[] {
  return findings.filter(
    (finding) => finding.severity === 'block' || (finding.severity === 'reason' && reasonGiven(job, finding) === null),
  );
}
