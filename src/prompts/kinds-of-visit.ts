import type { Job } from '../records/job.ts';

/** True when work is done on the vehicle. */
export const isWorked = (job: Job): boolean => job.identity.visit !== 'wasted visit';

/** True when a device is put in on this visit. */
export const isFitted = (job: Job): boolean => job.identity.visit === 'new fit' || job.identity.visit === 'swap';

/** True when wires are measured and joined: each fit, and a service call that says so by holding a list of probe points. */
export const isWired = (job: Job): boolean =>
  isFitted(job) || (job.identity.visit === 'service call' && job.probePoints !== undefined);
