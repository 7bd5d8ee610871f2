import type { Placement } from '../../records/placement.ts';
import { defineRule } from '../define-rule.ts';
import { exampleProfile } from '../example-profile.ts';
import { withPlacement } from '../overlay.ts';
import { workDone } from '../work-done.ts';

type Orientation = NonNullable<Placement['orientation']>;

const words = {
  summary: () => 'The device lies as its profile says.',
  why: 'The antenna looks out of one face, and motion sensors are set for one position.',
  says: {
    'lies otherwise': (device: { lies: Orientation; wanted: Orientation }) => ({
      what: `The device lies ${device.lies === 'any' ? 'in no certain position' : device.lies}; its profile asks for ${device.wanted}.`,
      whatToDo: `Turn it ${device.wanted}.`,
    }),
  },
};

/** The device lies as its profile says. */
export const orientationAsTheProfileSays = defineRule({
  id: 'orientation-as-the-profile-says',
  group: 'placement',
  severity: 'reason',
  source: "the device's own profile",
  words,
  check: ({ job, profile }) => {
    const lies = workDone(job).placement?.orientation;
    const wanted = profile?.orientation ?? 'any';
    if (lies === undefined || wanted === 'any' || lies === wanted) return [];
    return [{ at: 'device', says: 'lies otherwise', figures: { lies, wanted } }];
  },
  examples: [
    {
      name: 'label up, as asked',
      change: withPlacement({ orientation: 'label up' }),
      finds: [],
      facts: { profile: { ...exampleProfile, orientation: 'label up' } },
    },
    {
      name: 'label down where label up is asked',
      change: withPlacement({ orientation: 'label down' }),
      finds: [
        {
          at: 'device',
          severity: 'reason',
          what: 'The device lies label down; its profile asks for label up.',
          whatToDo: 'Turn it label up.',
        },
      ],
      facts: { profile: { ...exampleProfile, orientation: 'label up' } },
    },
  ],
});
