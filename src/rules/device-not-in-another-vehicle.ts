import type { Rule, RuleHit } from './rule.ts';
import { soundEarlier } from './sound-job.ts';

/** A device is not recorded in two vehicles at once. */
export const deviceNotInAnotherVehicle: Rule = {
  id: 'device-not-in-another-vehicle',
  group: 'record',
  severity: 'reason',
  summary: 'The device is not already recorded in another vehicle.',
  why: 'Two vehicles under one device number cannot be told apart later; one of the two records is wrong.',
  source: 'common practice, no source',
  check: ({ job, sameDevice }) =>
    sameDevice
      .filter(
        (each) =>
          (each.vehicle.vin ?? each.vehicle.plate ?? each.id) !== (job.vehicle.vin ?? job.vehicle.plate ?? job.id),
      )
      .map(
        (each): RuleHit => ({
          at: 'device',
          what: `The device ${job.device?.serial ?? job.device?.imei ?? ''} was recorded in another vehicle on ${each.day} (job ${each.id}).`,
          whatToDo: 'Read the label again; if the device was moved, write that as the reason.',
        }),
      ),
  examples: [
    { name: 'no other job with this device', change: (job) => job, finds: [] },
    {
      name: 'the same device in another vehicle',
      change: (job) => ({ ...job, vehicle: { ...job.vehicle, vin: '1G4AH59H45G118341' } }),
      facts: { sameDevice: [soundEarlier] },
      finds: ['device'],
    },
  ],
};
