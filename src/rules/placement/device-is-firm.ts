import type { Placement } from '../../records/placement.ts';
import { defineRule } from '../define-rule.ts';
import { withPlacement } from '../overlay.ts';
import { workDone } from '../work-done.ts';

const words = {
  summary: () => 'The device sits firm and cannot be shaken loose.',
  why: 'A loose device pulls at its leads, rattles, upsets its motion sensor, and can fall among the pedals.',
  says: {
    loose: () => ({
      what: 'The device is laid in loose.',
      whatToDo: 'Fix it until it does not move under the hand.',
    }),
    'not firm': (device: { fixing: Exclude<Placement['fixing'], 'loose'> }) => ({
      what: `The device is not firm on its ${device.fixing}.`,
      whatToDo: 'Fix it until it does not move under the hand.',
    }),
    'not recorded': () => ({
      what: 'Whether the device sits firm is not recorded.',
      whatToDo: 'Push it by hand and record whether it moves.',
    }),
  },
};

/** The device sits firm and cannot be shaken loose. */
export const deviceIsFirm = defineRule({
  id: 'device-is-firm',
  group: 'placement',
  severity: 'block',
  source: 'common practice, no source',
  words,
  check: ({ job }) => {
    const { placement } = workDone(job);
    if (placement === undefined) return [];
    const { fixing, firm } = placement;
    if (fixing === 'loose') return [{ at: 'device', says: 'loose' }];
    if (firm === false) return [{ at: 'device', says: 'not firm', figures: { fixing } }];
    return firm === true ? [] : [{ at: 'device', says: 'not recorded', severity: 'reason' }];
  },
  examples: [
    { name: 'firm on screws', change: withPlacement({ fixing: 'screws', firm: true }), finds: [] },
    {
      name: 'moves under the hand',
      change: withPlacement({ firm: false }),
      finds: [
        {
          at: 'device',
          severity: 'block',
          what: 'The device is not firm on its cable ties.',
          whatToDo: 'Fix it until it does not move under the hand.',
        },
      ],
    },
    {
      name: 'laid in loose',
      change: withPlacement({ fixing: 'loose' }),
      finds: [
        {
          at: 'device',
          severity: 'block',
          what: 'The device is laid in loose.',
          whatToDo: 'Fix it until it does not move under the hand.',
        },
      ],
    },
    {
      name: 'not recorded',
      change: withPlacement({ firm: undefined }),
      finds: [
        {
          at: 'device',
          severity: 'reason',
          what: 'Whether the device sits firm is not recorded.',
          whatToDo: 'Push it by hand and record whether it moves.',
        },
      ],
    },
  ],
});
