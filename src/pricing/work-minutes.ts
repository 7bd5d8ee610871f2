import { daysBetween } from '../quantities/calendar-date.ts';
import type { Job } from '../records/job.ts';

function minuteOf(time: string, day: string): number {
  return daysBetween(day, time.slice(0, 10)) * 1440 + Number(time.slice(11, 13)) * 60 + Number(time.slice(14, 16));
}

/**
 * Minutes worked on a job: from start to end less breaks and waiting; 0 when the times are not recorded.
 * @param job the job
 */
export function workMinutes(job: Job): number {
  const { start, end, breakMinutes = 0, waitingMinutes = 0 } = job.labour ?? {};
  if (start === undefined || end === undefined) return 0;
  return Math.max(0, minuteOf(end, job.day) - minuteOf(start, job.day) - breakMinutes - waitingMinutes);
}

/** Minutes as a person says them: "1 h 45 min". */
export function writeMinutes(minutes: number): string {
  const hours = Math.trunc(minutes / 60);
  return hours === 0 ? `${minutes} min` : `${hours} h${minutes % 60 === 0 ? '' : ` ${minutes % 60} min`}`;
}
