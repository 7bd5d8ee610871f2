import { exampleProfile } from './example-profile.ts';
import { withPlacement } from './overlay.ts';
import type { Rule } from './rule.ts';
import { workDone } from './work-done.ts';

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
    if (placement === undefined || profile === null || !placement.wet || profile.sealedAgainstWater) return [];
    return [
      {
        at: 'device',
        what: 'The place is wet and the device is not sealed against water.',
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
      finds: ['device'],
      facts: { profile: exampleProfile },
    },
  ],
};
