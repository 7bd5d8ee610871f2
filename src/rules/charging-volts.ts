import { millivoltsFromVolts } from '../quantities/millivolts.ts';
import type { JobFacts } from './job-facts.ts';
import { workDone } from './work-done.ts';

/** Millivolts at the battery with the engine running (ready), before and after the work; null where not read. */
export function chargingMillivolts(job: JobFacts['job'], when: 'before' | 'after'): number | null {
  const done = workDone(job);
  const running = (done.supply ?? []).find((each) => each.key === 'running' && each.taken === when);
  const volts = done[when]?.chargingVolts ?? running?.volts;
  return volts === undefined ? null : millivoltsFromVolts(volts);
}
