import { withPlacement } from '../overlay.ts';
import type { Rule } from '../rule.ts';
import { workDone } from '../work-done.ts';

/** The device can be reached with tools when it needs service. */
export const reachableForService: Rule = {
  id: 'reachable-for-service',
  group: 'placement',
  severity: 'advise',
  summary: 'The device can be reached with tools when it needs service.',
  why: 'A device that cannot be reached costs the next visit an hour.',
  source: 'common practice, no source',
  check: ({ job }) => {
    const { placement } = workDone(job);
    if (placement === undefined || !(placement.reachableWithTools === false)) return [];
    return [
      {
        at: 'device',
        what: 'The device cannot be reached with tools.',
        whatToDo: 'Move it, or write in the remark which panels must come off.',
      },
    ];
  },
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
};
