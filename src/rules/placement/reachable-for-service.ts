import { defineRule } from '../define-rule.ts';
import { withPlacement } from '../overlay.ts';
import { workDone } from '../work-done.ts';

const words = {
  summary: () => 'The device can be reached with tools when it needs service.',
  why: 'A device that cannot be reached costs the next visit an hour.',
  says: {
    'out of reach': () => ({
      what: 'The device cannot be reached with tools.',
      whatToDo: 'Move it, or write in the remark which panels must come off.',
    }),
  },
};

/** The device can be reached with tools when it needs service. */
export const reachableForService = defineRule({
  id: 'reachable-for-service',
  group: 'placement',
  severity: 'advise',
  source: 'common practice, no source',
  words,
  check: ({ job }) =>
    workDone(job).placement?.reachableWithTools === false ? [{ at: 'device', says: 'out of reach' }] : [],
  examples: [
    { name: 'reachable with tools', change: withPlacement({ reachableWithTools: true }), finds: [] },
    {
      name: 'buried',
      change: withPlacement({ reachableWithTools: false }),
      finds: [
        {
          at: 'device',
          severity: 'advise',
          what: 'The device cannot be reached with tools.',
          whatToDo: 'Move it, or write in the remark which panels must come off.',
        },
      ],
    },
  ],
});
