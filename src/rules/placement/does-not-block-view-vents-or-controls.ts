import { withPlacement } from '../overlay.ts';
import type { Rule } from '../rule.ts';
import { workDone } from '../work-done.ts';

/** The device blocks no view, vent, control, seat travel or hatch. */
export const doesNotBlockViewVentsOrControls: Rule = {
  id: 'does-not-block-view-vents-or-controls',
  group: 'placement',
  severity: 'reason',
  summary: 'The device blocks no view, vent, control, seat travel or hatch.',
  why: 'What is blocked is missed by the next driver, and in a bad moment.',
  source: 'common practice, no source; view of the road: 49 CFR 393.60(e)',
  check: ({ job }) =>
    (workDone(job).placement?.blocks ?? []).map((blocked) => ({
      at: blocked,
      what: `The device blocks a ${blocked}.`.replace('a seat travel', 'the seat travel').replace('a view', 'the view'),
      whatToDo: 'Move it until nothing is blocked.',
      ...(blocked === 'vent' ? { severity: 'advise' as const } : {}),
    })),
  examples: [
    { name: 'blocks nothing', change: withPlacement({ blocks: [] }), finds: [] },
    {
      name: 'blocks the view and a vent',
      change: withPlacement({ blocks: ['view', 'vent'] }),
      finds: [
        {
          at: 'view',
          severity: 'reason',
          what: 'The device blocks the view.',
          whatToDo: 'Move it until nothing is blocked.',
        },
        {
          at: 'vent',
          severity: 'advise',
          what: 'The device blocks a vent.',
          whatToDo: 'Move it until nothing is blocked.',
        },
      ],
    },
  ],
};
