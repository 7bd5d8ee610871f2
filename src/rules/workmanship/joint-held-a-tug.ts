import type { DeviceLead } from '../../records/connection.ts';
import { defineRule } from '../define-rule.ts';
import { withConnection } from '../overlay.ts';
import type { Voice } from '../rule-words.ts';
import { workDone } from '../work-done.ts';

const words = {
  summary: () => 'Each joint held a light tug by hand.',
  why: 'A crimp or tap that gives to a light tug fails on the road.',
  says: {
    'did not hold': (joint: { lead: DeviceLead }, voice: Voice) => ({
      what: `The joint of the ${voice.lead(joint.lead)} lead did not hold a light tug.`,
      whatToDo: 'Make the joint again and tug it again.',
    }),
    'not recorded': (joint: { lead: DeviceLead }, voice: Voice) => ({
      what: `No tug test is recorded for the ${voice.lead(joint.lead)} lead.`,
      whatToDo: 'Tug the joint lightly by hand and record whether it held.',
    }),
  },
};

/** Each joint held a light tug by hand. */
export const jointHeldATug = defineRule({
  id: 'joint-held-a-tug',
  group: 'workmanship',
  severity: 'reason',
  source:
    'common practice, no source (pull-out forces of UL 486A-486B are for samples; a joint in the vehicle gets a light tug only)',
  words,
  check: ({ job }) =>
    (workDone(job).connections ?? [])
      .filter((made) => made.tugHeld !== true)
      .map(({ lead, tugHeld }) =>
        tugHeld === false
          ? { at: lead, says: 'did not hold', figures: { lead }, severity: 'block' }
          : { at: lead, says: 'not recorded', figures: { lead }, severity: 'advise' },
      ),
  examples: [
    { name: 'tug held', change: withConnection('ground', { tugHeld: true }), finds: [] },
    {
      name: 'joint came apart',
      change: withConnection('ground', { tugHeld: false }),
      finds: [
        {
          at: 'ground',
          severity: 'block',
          what: 'The joint of the ground lead did not hold a light tug.',
          whatToDo: 'Make the joint again and tug it again.',
        },
      ],
    },
    {
      name: 'tug not recorded',
      change: withConnection('ground', { tugHeld: undefined }),
      finds: [
        {
          at: 'ground',
          severity: 'advise',
          what: 'No tug test is recorded for the ground lead.',
          whatToDo: 'Tug the joint lightly by hand and record whether it held.',
        },
      ],
    },
  ],
});
