import type { JobFacts } from './job-facts.ts';

/** The system's nominal volts: as the readings show, else as recorded, else 12. */
export function nominalVolts({ job, evidence }: Pick<JobFacts, 'job' | 'evidence'>): 12 | 24 {
  return evidence.systemVolts ?? job.vehicle.systemVolts ?? 12;
}
