import type { Job } from '../records/job.ts';

/** The sections that tell of work done: those of the job, or none on a wasted visit, where no work is judged. */
export function workDone(
  job: Job,
): Partial<
  Pick<
    Job,
    | 'panels'
    | 'supply'
    | 'probePoints'
    | 'ground'
    | 'connections'
    | 'device'
    | 'placement'
    | 'harness'
    | 'before'
    | 'after'
  >
> {
  return job.identity.visit === 'wasted visit' ? {} : job;
}
