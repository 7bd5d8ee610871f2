import { exampleProfile } from '../example-profile.ts';
import { withPlacement } from '../overlay.ts';
import type { Rule } from '../rule.ts';
import { workDone } from '../work-done.ts';

/** The device lies as its profile says. */
export const orientationAsTheProfileSays: Rule = {
  id: 'orientation-as-the-profile-says',
  group: 'placement',
  severity: 'reason',
  summary: 'The device lies as its profile says.',
  why: 'The antenna looks out of one face, and motion sensors are set for one position.',
  source: "the device's own profile",
  check: ({ job, profile }) => {
    const { placement } = workDone(job);
    if (placement?.orientation === undefined || profile === null || profile.orientation === 'any') return [];
    if (placement.orientation === profile.orientation) return [];
    return [
      {
        at: 'device',
        what: `The device lies ${placement.orientation === 'any' ? 'in no certain position' : placement.orientation}; its profile asks for ${profile.orientation}.`,
        whatToDo: `Turn it ${profile.orientation}.`,
      },
    ];
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
};
