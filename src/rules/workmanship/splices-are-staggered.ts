import { withConnection } from '../overlay.ts';
import type { Rule } from '../rule.ts';
import { workDone } from '../work-done.ts';

/** Common practice, no source: the length of one taped joint. */
const jointMillimetresMin = 25;

/** Joints in one bundle stand at least 25 mm apart. */
export const splicesAreStaggered: Rule = {
  id: 'splices-are-staggered',
  group: 'workmanship',
  severity: 'advise',
  summary: 'Joints in one bundle stand at least 25 mm apart.',
  why: 'Joints side by side make a lump that chafes, and one failed cover then shorts two wires.',
  source: 'FAA AC 43.13-1B ch. 11 (splices in a bundle are staggered); the 25 mm is common practice, no source',
  check: ({ job }) =>
    (workDone(job).connections ?? [])
      .filter((made) => made.nextJointMillimetres !== undefined && made.nextJointMillimetres < jointMillimetresMin)
      .map((made) => ({
        at: made.lead,
        what: `The joint of the ${made.lead} lead is ${made.nextJointMillimetres} mm from the next one; ${jointMillimetresMin} mm or more is wanted.`,
        whatToDo: 'Move one joint along the bundle.',
      })),
  examples: [
    { name: 'joints 25 mm apart', change: withConnection('supply', { nextJointMillimetres: 25 }), finds: [] },
    {
      name: 'joints 24 mm apart',
      change: withConnection('supply', { nextJointMillimetres: 24 }),
      finds: [
        {
          at: 'supply',
          severity: 'advise',
          what: 'The joint of the supply lead is 24 mm from the next one; 25 mm or more is wanted.',
          whatToDo: 'Move one joint along the bundle.',
        },
      ],
    },
  ],
};
