import { defineRule } from '../define-rule.ts';
import { withPlacement } from '../overlay.ts';
import { workDone } from '../work-done.ts';

const words = {
  summary: () => 'The device and its harness are out of the path of every air bag.',
  why: 'An inflating bag throws whatever is in its path at the occupant, or does not unfold.',
  says: {
    'in the path': (bag: { distance: number | null }) => ({
      what: `The device is in the path of an air bag${bag.distance === null ? '' : `, ${bag.distance} mm from it`}.`,
      whatToDo: 'Move the device and its harness out of the path before the vehicle leaves.',
    }),
    'not recorded': () => ({
      what: 'Whether the device is in the path of an air bag is not recorded.',
      whatToDo: 'Look for the air-bag marks on trim and pillars, and record the answer.',
    }),
  },
};

/** The device and its harness are out of the path of every air bag. */
export const clearOfAirBags = defineRule({
  id: 'clear-of-air-bags',
  group: 'placement',
  severity: 'block',
  source:
    'no published distance: FMVSS 208 gives none (from memory); 49 USC 30122(b) (safety equipment is not made inoperative)',
  words,
  check: ({ job }) => {
    const { placement } = workDone(job);
    if (placement?.inAirBagPath === true)
      return [{ at: 'device', says: 'in the path', figures: { distance: placement.airBagMillimetres ?? null } }];
    if (placement === undefined || placement.inAirBagPath === false) return [];
    return [{ at: 'device', says: 'not recorded', severity: 'reason' }];
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
});
