import { defineRule } from '../define-rule.ts';
import { withPlacement } from '../overlay.ts';
import { workDone } from '../work-done.ts';

const words = {
  summary: () => 'The device is held at two points or more, by one adhesive pad, or as its profile says.',
  why: 'Held at one point a device turns and works loose.',
  says: {
    'too few': (points: { points: number; least: number }) => ({
      what: `The device is held at ${points.points === 1 ? '1 point' : `${points.points} points`}; ${points.least} or more are wanted.`,
      whatToDo: 'Add fixing points.',
    }),
  },
};

/** The device is held at two points or more, by one adhesive pad, or as its profile says. */
export const fixingPointsSuffice = defineRule({
  id: 'fixing-points-suffice',
  group: 'placement',
  severity: 'reason',
  source: "the device's own profile; two points: common practice, no source",
  words,
  check: ({ job, profile }) => {
    const { placement } = workDone(job);
    const points = placement?.fixingPoints;
    // a pad holds by its area, not by points
    const least = placement?.fixing === 'adhesive pad' ? 1 : (profile?.fixingPointsMin ?? 2);
    if (points === undefined || points >= least || placement?.fixing === 'loose') return [];
    return [{ at: 'device', says: 'too few', figures: { points, least } }];
  },
  examples: [
    { name: 'one adhesive pad', change: withPlacement({ fixing: 'adhesive pad', fixingPoints: 1 }), finds: [] },
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
});
