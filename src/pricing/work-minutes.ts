import { Problem } from '../problem.ts';
import { utcMinutes } from '../quantities/local-time.ts';
import type { Job } from '../records/job.ts';

/** The time on site from start to end, as moments in minutes since 1970 in UTC. */
export type WorkSpan = { readonly from: number; readonly to: number };

/**
 * When work on a job began and ended, across midnight and a change of the clocks; null when the times are not recorded.
 * @param job the job
 * @param timeZone the business's time zone
 * @throws Problem when the work ends before it begins
 */
export function workSpan(job: Job, timeZone: string): WorkSpan | null {
  const { start, end } = job.labour ?? {};
  if (start === undefined || end === undefined) return null;
  const from = utcMinutes(start, timeZone);
  const first = utcMinutes(end, timeZone);
  // in the night when the clocks go back, an end on the clock before its start is the second time that hour is struck
  const to = first < from ? utcMinutes(end, timeZone, 'second') : first;
  if (to < from)
    throw new Problem(
      `The work ends (${end}) before it begins (${start}).`,
      `${job.id}, labour.end`,
      'Correct the times; work past midnight ends on the next day.',
    );
  return { from, to };
}

/**
 * Minutes worked on a job: from start to end less breaks and waiting; 0 when the times are not recorded.
 * @param job the job
 * @param timeZone the business's time zone
 * @throws Problem when the work ends before it begins
 */
export function workMinutes(job: Job, timeZone: string): number {
  const span = workSpan(job, timeZone);
  if (span === null) return 0;
  const { breakMinutes = 0, waitingMinutes = 0 } = job.labour ?? {};
  return Math.max(0, span.to - span.from - breakMinutes - waitingMinutes);
}

/** Minutes as a person says them: "1 h 45 min". */
export function writeMinutes(minutes: number): string {
  const hours = Math.trunc(minutes / 60);
  return hours === 0 ? `${minutes} min` : `${hours} h${minutes % 60 === 0 ? '' : ` ${minutes % 60} min`}`;
}
