import { withConnection } from '../overlay.ts';
import type { Rule, RuleHit } from '../rule.ts';
import { workDone } from '../work-done.ts';

/** Each joint held a light tug by hand. */
export const jointHeldATug: Rule = {
  id: 'joint-held-a-tug',
  group: 'workmanship',
  severity: 'reason',
  summary: 'Each joint held a light tug by hand.',
  why: 'A crimp or tap that gives to a light tug fails on the road.',
  source:
    'common practice, no source (pull-out forces of UL 486A-486B are for samples; a joint in the vehicle gets a light tug only)',
  check: ({ job }) =>
    (workDone(job).connections ?? []).flatMap((made): readonly RuleHit[] => {
      if (made.tugHeld === true) return [];
      if (made.tugHeld === false) {
        return [
          {
            at: made.lead,
            what: `The joint of the ${made.lead} lead did not hold a light tug.`,
            whatToDo: 'Make the joint again and tug it again.',
            severity: 'block',
          },
        ];
      }
      return [
        {
          at: made.lead,
          what: `No tug test is recorded for the ${made.lead} lead.`,
          whatToDo: 'Tug the joint lightly by hand and record whether it held.',
          severity: 'advise',
        },
      ];
    }),
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
};
