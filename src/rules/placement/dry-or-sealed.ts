import type { Zone } from '../../records/placement.ts';
import { exampleProfile } from '../example-profile.ts';
import { withPlacement } from '../overlay.ts';
import type { Rule } from '../rule.ts';
import { workDone } from '../work-done.ts';

/** Zones that rain, spray or washing reaches whatever was answered (common practice, no source). */
const wetZones: readonly Zone[] = ['engine bay', 'battery box', 'chassis', 'roof'];

/** The device sits dry, or is sealed against water. */
export const dryOrSealed: Rule = {
  id: 'dry-or-sealed',
  group: 'placement',
  severity: 'reason',
  summary: 'The device sits dry, or is sealed against water.',
  why: 'Water in an unsealed device is the end of it, sometimes months later.',
  source: "the device's own profile; common practice, no source",
  check: ({ job, profile }) => {
    const { placement } = workDone(job);
    if (placement === undefined || profile === null || profile.sealedAgainstWater) return [];
    const outside = wetZones.includes(placement.zone);
    if (!placement.wet && !outside) return [];
    return [
      {
        at: 'device',
        what: outside
          ? `Water reaches the ${placement.zone}, and the device is not sealed against it.`
          : 'The place is wet and the device is not sealed against water.',
        whatToDo: 'Move it to a dry place, or fit a device that is sealed.',
      },
    ];
  },
  examples: [
    { name: 'dry place', change: withPlacement({ wet: false }), finds: [], facts: { profile: exampleProfile } },
    {
      name: 'sealed device in a wet place',
      change: withPlacement({ wet: true }),
      finds: [],
      facts: { profile: { ...exampleProfile, sealedAgainstWater: true } },
    },
    {
      name: 'unsealed device in a wet place',
      change: withPlacement({ wet: true }),
      finds: [
        {
          at: 'device',
          severity: 'reason',
          what: 'The place is wet and the device is not sealed against water.',
          whatToDo: 'Move it to a dry place, or fit a device that is sealed.',
        },
      ],
      facts: { profile: exampleProfile },
    },
    {
      name: 'unsealed device on the chassis',
      change: withPlacement({ zone: 'chassis', wet: false }),
      finds: [
        {
          at: 'device',
          severity: 'reason',
          what: 'Water reaches the chassis, and the device is not sealed against it.',
          whatToDo: 'Move it to a dry place, or fit a device that is sealed.',
        },
      ],
      facts: { profile: exampleProfile },
    },
  ],
};
