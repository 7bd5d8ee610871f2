import type { Job } from '../records/job.ts';
import type { Finding } from './rule.ts';

/**
 * The findings that still stop the handover: every block, and each reason the installer has not answered in writing.
 * @param job the job with its answers; an answer without a place answers its rule everywhere
 * @param findings what the rules found
 */
export function openFindings(job: Job, findings: readonly Finding[]): readonly Finding[] {
  return findings.filter((finding) => {
    if (finding.severity === 'block') return true;
    if (finding.severity === 'advise') return false;
    return !job.answers.some(
      (answer) => answer.rule === finding.rule && (answer.at === undefined || answer.at === finding.at),
    );
  });
}
