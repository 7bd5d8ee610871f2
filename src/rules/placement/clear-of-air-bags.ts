import { withPlacement } from '../overlay.ts';
import type { Rule } from '../rule.ts';
import { workDone } from '../work-done.ts';

/** The device and its harness are out of the path of every air bag. */
export const clearOfAirBags: Rule = {
  id: 'clear-of-air-bags',
  group: 'placement',
  severity: 'block',
  summary: 'The device and its harness are out of the path of every air bag.',
  why: 'An inflating bag throws whatever is in its path at the occupant, or does not unfold.',
  source:
    'no published distance: FMVSS 208 gives none (from memory); 49 USC 30122(b) (safety equipment is not made inoperative)',
  check: ({ job }) => {
    const { placement } = workDone(job);
    if (placement?.inAirBagPath === true) {
      const far = placement.airBagMillimetres;
      return [
        {
          at: 'device',
          what: `The device is in the path of an air bag${far === undefined ? '' : `, ${far} mm from it`}.`,
          whatToDo: 'Move the device and its harness out of the path before the vehicle leaves.',
        },
      ];
    }
    if (placement === undefined || placement.inAirBagPath === false) return [];
    return [
      {
        at: 'device',
        what: 'Whether the device is in the path of an air bag is not recorded.',
        whatToDo: 'Look for the air-bag marks on trim and pillars, and record the answer.',
        severity: 'reason',
      },
    ];
  },
  examples: [
    { name: 'out of every path', change: withPlacement({ inAirBagPath: false }), finds: [] },
    {
      name: 'in the path',
      change: withPlacement({ inAirBagPath: true }),
      finds: [
        {
          at: 'device',
          severity: 'block',
          what: 'The device is in the path of an air bag, 300 mm from it.',
          whatToDo: 'Move the device and its harness out of the path before the vehicle leaves.',
        },
      ],
    },
    {
      name: 'not recorded',
      change: withPlacement({ inAirBagPath: undefined }),
      finds: [
        {
          at: 'device',
          severity: 'reason',
          what: 'Whether the device is in the path of an air bag is not recorded.',
          whatToDo: 'Look for the air-bag marks on trim and pillars, and record the answer.',
        },
      ],
    },
  ],
};
