import { withPlacement } from '../overlay.ts';
import type { Rule } from '../rule.ts';
import { workDone } from '../work-done.ts';

/** The device is held at two points or more, or as its profile says. */
export const fixingPointsSuffice: Rule = {
  id: 'fixing-points-suffice',
  group: 'placement',
  severity: 'reason',
  summary: 'The device is held at two points or more, or as its profile says.',
  why: 'Held at one point a device turns and works loose.',
  source: "the device's own profile; two points: common practice, no source",
  check: ({ job, profile }) => {
    const { placement } = workDone(job);
    if (
      placement === undefined ||
      !(
        placement.fixingPoints !== undefined &&
        placement.fixingPoints < (profile?.fixingPointsMin ?? 2) &&
        placement.fixing !== 'loose'
      )
    )
      return [];
    return [
      {
        at: 'device',
        what: `The device is held at ${placement.fixingPoints === 1 ? '1 point' : `${placement.fixingPoints} points`}; ${profile?.fixingPointsMin ?? 2} or more are wanted.`,
        whatToDo: 'Add fixing points.',
      },
    ];
  },
  examples: [
    { name: 'four points', change: withPlacement({ fixing: 'cable ties', fixingPoints: 4 }), finds: [] },
    {
      name: 'no point',
      change: withPlacement({ fixing: 'cable ties', fixingPoints: 0 }),
      finds: [
        {
          at: 'device',
          severity: 'reason',
          what: 'The device is held at 0 points; 2 or more are wanted.',
          whatToDo: 'Add fixing points.',
        },
      ],
    },
  ],
};
