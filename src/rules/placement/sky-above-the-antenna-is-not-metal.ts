import { defineRule } from '../define-rule.ts';
import { withPlacement } from '../overlay.ts';
import { workDone } from '../work-done.ts';

const words = {
  summary: () => 'Nothing of metal lies between the antenna and the sky.',
  why: 'Metal overhead hides the satellites: positions jump or stop.',
  says: {
    'metal above': () => ({
      what: 'There is metal above the antenna.',
      whatToDo: 'Move the device under plastic, fabric or plain glass.',
    }),
    'coated glass above': () => ({
      what: 'The glass above the antenna is heated or coated with metal.',
      whatToDo: 'Prove reception before closing up, or move the device under plastic.',
    }),
  },
};

/** Nothing of metal lies between the antenna and the sky. */
export const skyAboveTheAntennaIsNotMetal = defineRule({
  id: 'sky-above-the-antenna-is-not-metal',
  group: 'placement',
  severity: 'reason',
  source:
    'common practice, no source (a position in three dimensions needs four satellites in view, GPS SPS performance standard, from memory)',
  words,
  check: ({ job, profile }) => {
    const { placement } = workDone(job);
    if (placement === undefined || profile?.hasAntenna === false) return [];
    if (placement.above === 'metal') return [{ at: 'device', says: 'metal above' }];
    return placement.above === 'heated or coated glass'
      ? [{ at: 'device', says: 'coated glass above', severity: 'advise' }]
      : [];
  },
  examples: [
    { name: 'plastic above', change: withPlacement({ above: 'plastic' }), finds: [] },
    {
      name: 'metal above',
      change: withPlacement({ above: 'metal' }),
      finds: [
        {
          at: 'device',
          severity: 'reason',
          what: 'There is metal above the antenna.',
          whatToDo: 'Move the device under plastic, fabric or plain glass.',
        },
      ],
    },
    {
      name: 'coated glass above',
      change: withPlacement({ above: 'heated or coated glass' }),
      finds: [
        {
          at: 'device',
          severity: 'advise',
          what: 'The glass above the antenna is heated or coated with metal.',
          whatToDo: 'Prove reception before closing up, or move the device under plastic.',
        },
      ],
    },
  ],
});
