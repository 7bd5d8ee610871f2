import { withPlacement } from '../overlay.ts';
import type { Rule } from '../rule.ts';
import { workDone } from '../work-done.ts';

/** The device is not within reach of a casual hand. */
export const notWithinCasualReach: Rule = {
  id: 'not-within-casual-reach',
  group: 'placement',
  severity: 'advise',
  summary: 'The device is not within reach of a casual hand.',
  why: 'What a hand finds, a hand unplugs.',
  source: 'common practice, no source',
  check: ({ job }) => {
    const { placement } = workDone(job);
    if (placement === undefined || !(placement.reachableByHand === true)) return [];
    return [
      {
        at: 'device',
        what: 'The device can be reached by hand without a tool.',
        whatToDo: 'Move it behind a panel, or tell the customer.',
      },
    ];
  },
  examples: [
    { name: 'behind a panel', change: withPlacement({ reachableByHand: false }), finds: [] },
    {
      name: 'in the open',
      change: withPlacement({ reachableByHand: true }),
      finds: [
        {
          at: 'device',
          severity: 'advise',
          what: 'The device can be reached by hand without a tool.',
          whatToDo: 'Move it behind a panel, or tell the customer.',
        },
      ],
    },
  ],
};
