import { withPlacement } from '../overlay.ts';
import type { Rule } from '../rule.ts';
import { workDone } from '../work-done.ts';

/** The device is not where a head or knee strikes in a crash. */
export const clearOfHeadStrikeAreas: Rule = {
  id: 'clear-of-head-strike-areas',
  group: 'placement',
  severity: 'reason',
  summary: 'The device is not where a head or knee strikes in a crash.',
  why: 'A hard box in a strike area turns a padded surface into an edge.',
  source: 'common practice, no source',
  check: ({ job }) => {
    const { placement } = workDone(job);
    if (placement === undefined || !(placement.inHeadStrikeArea === true)) return [];
    return [
      {
        at: 'device',
        what: 'The device is in an area where a head or knee may strike.',
        whatToDo: 'Move it behind trim or out of reach of head and knees.',
      },
    ];
  },
  examples: [
    { name: 'behind trim', change: withPlacement({ inHeadStrikeArea: false }), finds: [] },
    {
      name: 'in a strike area',
      change: withPlacement({ inHeadStrikeArea: true }),
      finds: [
        {
          at: 'device',
          severity: 'reason',
          what: 'The device is in an area where a head or knee may strike.',
          whatToDo: 'Move it behind trim or out of reach of head and knees.',
        },
      ],
    },
  ],
};
