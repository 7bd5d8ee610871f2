import type { DeviceLead } from '../../records/connection.ts';
import { defineRule } from '../define-rule.ts';
import { withConnection } from '../overlay.ts';
import type { Voice } from '../rule-words.ts';
import { workDone } from '../work-done.ts';

const words = {
  summary: () => 'Every joint is tied, so that a pull on the lead does not reach it.',
  why: 'A joint that carries the weight or the pull of its lead loosens.',
  says: {
    'not tied': (joint: { lead: DeviceLead }, voice: Voice) => ({
      what: `The joint of the ${voice.lead(joint.lead)} lead is not tied.`,
      whatToDo: 'Tie the lead to the vehicle wire beside the joint.',
    }),
  },
};

/** Every joint is tied, so that a pull on the lead does not reach it. */
export const spliceIsTied = defineRule({
  id: 'splice-is-tied',
  group: 'workmanship',
  severity: 'reason',
  source: 'common practice, no source',
  words,
  check: ({ job }) =>
    (workDone(job).connections ?? [])
      .filter((made) => made.tied === false)
      .map(({ lead }) => ({ at: lead, says: 'not tied', figures: { lead } })),
  examples: [
    { name: 'tied joint', change: withConnection('supply', { tied: true }), finds: [] },
    {
      name: 'joint left untied',
      change: withConnection('supply', { tied: false }),
      finds: [
        {
          at: 'supply',
          severity: 'reason',
          what: 'The joint of the supply lead is not tied.',
          whatToDo: 'Tie the lead to the vehicle wire beside the joint.',
        },
      ],
    },
  ],
});
