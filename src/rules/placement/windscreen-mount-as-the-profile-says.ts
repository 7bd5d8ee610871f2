import { defineRule } from '../define-rule.ts';
import { exampleProfile } from '../example-profile.ts';
import { withPlacement } from '../overlay.ts';
import { workDone } from '../work-done.ts';

const words = {
  summary: () => 'Only a device made for it sits on the windscreen.',
  why: 'Sun behind glass heats it beyond a cab, and a mount not made for glass lets go into the face of the driver.',
  says: {
    'not made for it': (device: { name: string }) => ({
      what: `${device.name} sits on the windscreen, and its profile does not say that it is made for that.`,
      whatToDo: 'Move it into the dash, or write what the maker says and how it is held.',
    }),
  },
};

/** Only a device made for it sits on the windscreen. */
export const windscreenMountAsTheProfileSays = defineRule({
  id: 'windscreen-mount-as-the-profile-says',
  group: 'placement',
  severity: 'reason',
  source: "the device's own profile; common practice, no source",
  words,
  check: ({ job, profile }) =>
    workDone(job).placement?.zone !== 'windscreen' || profile === null || profile.windscreen
      ? []
      : [{ at: 'windscreen', says: 'not made for it', figures: { name: profile.name } }],
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
});
