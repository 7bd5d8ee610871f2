import { defineRule } from '../define-rule.ts';
import { withPlacement } from '../overlay.ts';
import { workDone } from '../work-done.ts';

const words = {
  summary: () => 'The device is not within reach of a casual hand.',
  why: 'What a hand finds, a hand unplugs.',
  says: {
    'within reach': () => ({
      what: 'The device can be reached by hand without a tool.',
      whatToDo: 'Move it behind a panel, or tell the customer.',
    }),
  },
};

/** The device is not within reach of a casual hand. */
export const notWithinCasualReach = defineRule({
  id: 'not-within-casual-reach',
  group: 'placement',
  severity: 'advise',
  source: 'common practice, no source',
  words,
  check: ({ job }) =>
    workDone(job).placement?.reachableByHand === true ? [{ at: 'device', says: 'within reach' }] : [],
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
});
