import type { Vehicle } from '../../records/vehicle.ts';
import { defineRule } from '../define-rule.ts';
import type { Voice } from '../rule-words.ts';
import { soundEarlier } from '../sound-job.ts';

type Odometer = NonNullable<Vehicle['odometer']>;

/** Metres of a mile and of a kilometre. Source: international mile of 1959, 1609.344 m. */
const metres = { mi: 1609.344, km: 1000 } as const;

/** Whether one odometer is below another; never when they cannot be compared (hours against distance). */
function isBelow(one: Odometer, other: Odometer): boolean {
  if (one.unit === other.unit) return one.value < other.value;
  if (one.unit === 'h' || other.unit === 'h') return false;
  // both are whole numbers: one unit of the coarser counts as equal
  return (one.value + 1) * metres[one.unit] <= other.value * metres[other.unit];
}

const words = {
  summary: () => 'The odometer is not below that of an earlier visit.',
  why: 'One of the two visits was filed with the wrong vehicle, or the instrument was changed.',
  says: {
    'below earlier': (
      odometer: { now: number; unit: Odometer['unit']; day: string; earlier: number; unitEarlier: Odometer['unit'] },
      voice: Voice,
    ) => ({
      what: `The odometer reads ${odometer.now} ${odometer.unit}, on ${voice.day(odometer.day)} it read ${odometer.earlier} ${odometer.unitEarlier}.`,
      whatToDo: 'Read it again, and compare the VIN.',
    }),
  },
};

/** The odometer is not below that of an earlier visit. */
export const odometerNotBelowEarlier = defineRule({
  id: 'odometer-not-below-earlier',
  group: 'record',
  severity: 'reason',
  source: 'common practice, no source; a mile is 1609.344 m (international yard and pound agreement, 1959)',
  words,
  check: ({ job, earlier }) => {
    const now = job.vehicle.odometer;
    if (now === undefined) return [];
    // the latest of those above is enough to say
    const above = earlier.findLast(
      (each) => each.vehicle.odometer !== undefined && isBelow(now, each.vehicle.odometer),
    );
    const then = above?.vehicle.odometer;
    if (above === undefined || then === undefined) return [];
    const figures = { now: now.value, unit: now.unit, day: above.day, earlier: then.value, unitEarlier: then.unit };
    return [{ at: 'vehicle', says: 'below earlier', figures }];
  },
  examples: [
    { name: 'no earlier visit', change: (job) => job, finds: [] },
    { name: 'as many miles as earlier', change: (job) => job, facts: { earlier: [soundEarlier] }, finds: [] },
    {
      name: 'an earlier visit with more miles',
      change: (job) => ({ ...job, vehicle: { ...job.vehicle, odometer: { value: 100, unit: 'mi' } } }),
      facts: { earlier: [soundEarlier] },
      finds: [
        {
          at: 'vehicle',
          severity: 'reason',
          what: 'The odometer reads 100 mi, on 2026-01-10 it read 48211 mi.',
          whatToDo: 'Read it again, and compare the VIN.',
        },
      ],
    },
    {
      name: '77,000 km after 48,211 mi',
      change: (job) => ({ ...job, vehicle: { ...job.vehicle, odometer: { value: 77_000, unit: 'km' } } }),
      facts: { earlier: [soundEarlier] },
      finds: [
        {
          at: 'vehicle',
          severity: 'reason',
          what: 'The odometer reads 77000 km, on 2026-01-10 it read 48211 mi.',
          whatToDo: 'Read it again, and compare the VIN.',
        },
      ],
    },
  ],
});
