import { withPlacement } from '../overlay.ts';
import type { Rule } from '../rule.ts';
import { workDone } from '../work-done.ts';

/** The device sits firm and cannot be shaken loose. */
export const deviceIsFirm: Rule = {
  id: 'device-is-firm',
  group: 'placement',
  severity: 'block',
  summary: 'The device sits firm and cannot be shaken loose.',
  why: 'A loose device pulls at its leads, rattles, upsets its motion sensor, and can fall among the pedals.',
  source: 'common practice, no source',
  check: ({ job }) => {
    const { placement } = workDone(job);
    if (placement === undefined) return [];
    if (placement.fixing === 'loose' || placement.firm === false) {
      return [
        {
          at: 'device',
          what:
            placement.fixing === 'loose'
              ? 'The device is laid in loose.'
              : `The device is not firm on its ${placement.fixing}.`,
          whatToDo: 'Fix it until it does not move under the hand.',
        },
      ];
    }
    if (placement.firm === true) return [];
    return [
      {
        at: 'device',
        what: 'Whether the device sits firm is not recorded.',
        whatToDo: 'Push it by hand and record whether it moves.',
        severity: 'reason',
      },
    ];
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
};
