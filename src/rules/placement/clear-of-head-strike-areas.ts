import { defineRule } from '../define-rule.ts';
import { withPlacement } from '../overlay.ts';
import { workDone } from '../work-done.ts';

const words = {
  summary: () => 'The device is not where a head or knee strikes in a crash.',
  why: 'A hard box in a strike area turns a padded surface into an edge.',
  says: {
    'in a strike area': () => ({
      what: 'The device is in an area where a head or knee may strike.',
      whatToDo: 'Move it behind trim or out of reach of head and knees.',
    }),
  },
};

/** The device is not where a head or knee strikes in a crash. */
export const clearOfHeadStrikeAreas = defineRule({
  id: 'clear-of-head-strike-areas',
  group: 'placement',
  severity: 'reason',
  source: 'common practice, no source',
  words,
  check: ({ job }) =>
    workDone(job).placement?.inHeadStrikeArea === true ? [{ at: 'device', says: 'in a strike area' }] : [],
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
});
