import type { Rule, RuleHit } from './rule.ts';
import { soundEarlier } from './sound-job.ts';

/** The odometer is not below that of an earlier visit. */
export const odometerNotBelowEarlier: Rule = {
  id: 'odometer-not-below-earlier',
  group: 'record',
  severity: 'reason',
  summary: 'The odometer is not below that of an earlier visit.',
  why: 'One of the two visits was filed with the wrong vehicle.',
  source: 'common practice, no source',
  check: ({ job, earlier }) =>
    earlier
      .filter(
        (each) =>
          each.vehicle.odometer !== undefined &&
          job.vehicle.odometer !== undefined &&
          each.vehicle.odometer.unit === job.vehicle.odometer.unit &&
          each.vehicle.odometer.value > job.vehicle.odometer.value,
      )
      .map(
        (each): RuleHit => ({
          at: 'vehicle',
          what: `The odometer reads ${job.vehicle.odometer?.value}, on ${each.day} it read ${each.vehicle.odometer?.value}.`,
          whatToDo: 'Read it again, and compare the VIN.',
        }),
      ),
  examples: [
    { name: 'no earlier visit', change: (job) => job, finds: [] },
    {
      name: 'an earlier visit with more miles',
      change: (job) => ({ ...job, vehicle: { ...job.vehicle, odometer: { value: 100, unit: 'mi' } } }),
      facts: { earlier: [soundEarlier] },
      finds: ['vehicle'],
    },
  ],
};
