import type { Job } from '../records/job.ts';

/**
 * The nominal volts of a job's system: as recorded, else 24 where any reading at the battery lies above what 12 V can show, else 12.
 * Source: 12 V systems stay below 16 V, 24 V systems rest above 18 V (ISO 16750-2, codes A to D and H).
 * @param job the job
 */
export function nominalSystem(job: Job): 12 | 24 {
  if (job.vehicle.systemVolts !== undefined) return job.vehicle.systemVolts;
  const volts = [
    ...(job.supply ?? []).map((each) => each.volts),
    ...[job.before, job.after].flatMap((each) => [each?.restVolts ?? 0, each?.chargingVolts ?? 0]),
  ];
  return volts.some((each) => each > 18) ? 24 : 12;
}
