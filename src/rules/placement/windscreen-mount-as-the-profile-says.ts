import { exampleProfile } from '../example-profile.ts';
import { withPlacement } from '../overlay.ts';
import type { Rule } from '../rule.ts';
import { workDone } from '../work-done.ts';

/** Only a device made for it sits on the windscreen. */
export const windscreenMountAsTheProfileSays: Rule = {
  id: 'windscreen-mount-as-the-profile-says',
  group: 'placement',
  severity: 'reason',
  summary: 'Only a device made for it sits on the windscreen.',
  why: 'Sun behind glass heats it beyond a cab, and a mount not made for glass lets go into the face of the driver.',
  source: "the device's own profile; common practice, no source",
  check: ({ job, profile }) => {
    const { placement } = workDone(job);
    if (placement?.zone !== 'windscreen' || profile === null || profile.windscreen) return [];
    return [
      {
        at: 'windscreen',
        what: `${profile.name} sits on the windscreen, and its profile does not say that it is made for that.`,
        whatToDo: 'Move it into the dash, or write what the maker says and how it is held.',
      },
    ];
  },
  examples: [
    { name: 'in the dash', change: (job) => job, finds: [] },
    {
      name: 'a windscreen device on the windscreen',
      change: withPlacement({ zone: 'windscreen' }),
      facts: { profile: { ...exampleProfile, windscreen: true } },
      finds: [],
    },
    {
      name: 'another on the windscreen',
      change: withPlacement({ zone: 'windscreen' }),
      finds: [
        {
          at: 'windscreen',
          severity: 'reason',
          what: 'Example device sits on the windscreen, and its profile does not say that it is made for that.',
          whatToDo: 'Move it into the dash, or write what the maker says and how it is held.',
        },
      ],
    },
  ],
};
