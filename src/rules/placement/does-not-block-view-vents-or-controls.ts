import type { Placement } from '../../records/placement.ts';
import { defineRule } from '../define-rule.ts';
import { withPlacement } from '../overlay.ts';
import { workDone } from '../work-done.ts';

type Blocked = Placement['blocks'][number];

const nouns: Readonly<Record<Blocked, string>> = {
  vent: 'a vent',
  view: 'the view',
  control: 'a control',
  'seat travel': 'the seat travel',
  hatch: 'a hatch',
};

const words = {
  summary: () => 'The device blocks no view, vent, control, seat travel or hatch.',
  why: 'What is blocked is missed by the next driver, and in a bad moment.',
  says: {
    blocks: (device: { blocked: Blocked }) => ({
      what: `The device blocks ${nouns[device.blocked]}.`,
      whatToDo: 'Move it until nothing is blocked.',
    }),
  },
};

/** The device blocks no view, vent, control, seat travel or hatch. */
export const doesNotBlockViewVentsOrControls = defineRule({
  id: 'does-not-block-view-vents-or-controls',
  group: 'placement',
  severity: 'reason',
  source: 'common practice, no source; view of the road: 49 CFR 393.60(e)',
  words,
  check: ({ job }) =>
    (workDone(job).placement?.blocks ?? []).map((blocked) => ({
      at: blocked,
      says: 'blocks',
      figures: { blocked },
      ...(blocked === 'vent' ? { severity: 'advise' } : {}),
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
});
