import type { Zone } from '../../records/placement.ts';
import { defineRule } from '../define-rule.ts';
import { exampleProfile } from '../example-profile.ts';
import { withPlacement } from '../overlay.ts';
import { workDone } from '../work-done.ts';

/** Zones that rain, spray or washing reaches whatever was answered (common practice, no source). */
const wetZones = ['engine bay', 'battery box', 'chassis', 'roof'] as const satisfies readonly Zone[];
type WetZone = (typeof wetZones)[number];

const words = {
  summary: () => 'The device sits dry, or is sealed against water.',
  why: 'Water in an unsealed device is the end of it, sometimes months later.',
  says: {
    'zone is wet': (place: { zone: WetZone }) => ({
      what: `Water reaches the ${place.zone}, and the device is not sealed against it.`,
      whatToDo: 'Move it to a dry place, or fit a device that is sealed.',
    }),
    'place is wet': () => ({
      what: 'The place is wet and the device is not sealed against water.',
      whatToDo: 'Move it to a dry place, or fit a device that is sealed.',
    }),
  },
};

/** The device sits dry, or is sealed against water. */
export const dryOrSealed = defineRule({
  id: 'dry-or-sealed',
  group: 'placement',
  severity: 'reason',
  source: "the device's own profile; common practice, no source",
  words,
  check: ({ job, profile }) => {
    const { placement } = workDone(job);
    if (placement === undefined || profile === null || profile.sealedAgainstWater) return [];
    const zone = wetZones.find((each) => each === placement.zone);
    if (zone !== undefined) return [{ at: 'device', says: 'zone is wet', figures: { zone } }];
    return placement.wet ? [{ at: 'device', says: 'place is wet' }] : [];
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
});
