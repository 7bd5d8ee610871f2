import type { DeviceLead } from '../../records/connection.ts';
import { defineRule } from '../define-rule.ts';
import type { Voice } from '../rule-words.ts';
import { workDone } from '../work-done.ts';

const words = {
  summary: () => 'Every lead that the profile says needs a fuse has one.',
  why: 'An unfused lead burns where it chafes.',
  says: {
    'no fuse': (joint: { lead: DeviceLead }, voice: Voice) => ({
      what: `The ${voice.lead(joint.lead)} lead has no fuse.`,
      whatToDo: 'Set the fuse the maker names into the lead, close to the joint.',
    }),
  },
};

/** Every lead that the profile says needs a fuse has one. */
export const supplyLeadIsFused = defineRule({
  id: 'supply-lead-is-fused',
  group: 'wiring',
  severity: 'block',
  source: "33 CFR 183.455(b)(1), a boat rule used as a yardstick; the device maker's data",
  words,
  check: ({ job, profile }) =>
    (workDone(job).connections ?? [])
      .filter(
        (made) =>
          made.fuse === undefined &&
          (made.lead === 'supply' || (made.lead === 'ignition' && (profile?.fusedLeads ?? []).includes('ignition'))),
      )
      .map(({ lead }) => ({ at: lead, says: 'no fuse', figures: { lead } })),
  examples: [
    { name: 'a fuse in each lead', change: (job) => job, finds: [] },
    {
      name: 'no fuse in the supply lead',
      change: (job) => ({
        ...job,
        connections: (job.connections ?? []).map(({ fuse, ...made }) =>
          made.lead === 'supply' || fuse === undefined ? made : { ...made, fuse },
        ),
      }),
      finds: [
        {
          at: 'supply',
          severity: 'block',
          what: 'The supply lead has no fuse.',
          whatToDo: 'Set the fuse the maker names into the lead, close to the joint.',
        },
      ],
    },
  ],
});
