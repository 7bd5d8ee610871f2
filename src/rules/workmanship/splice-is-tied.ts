import { withConnection } from '../overlay.ts';
import type { Rule } from '../rule.ts';
import { workDone } from '../work-done.ts';

/** Every joint is tied, so that a pull on the lead does not reach it. */
export const spliceIsTied: Rule = {
  id: 'splice-is-tied',
  group: 'workmanship',
  severity: 'reason',
  summary: 'Every joint is tied, so that a pull on the lead does not reach it.',
  why: 'A joint that carries the weight or the pull of its lead loosens.',
  source: 'common practice, no source',
  check: ({ job }) =>
    (workDone(job).connections ?? [])
      .filter((made) => made.tied === false)
      .map((made) => ({
        at: made.lead,
        what: `The joint of the ${made.lead} lead is not tied.`,
        whatToDo: 'Tie the lead to the vehicle wire beside the joint.',
      })),
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
};
