import type { DeviceLead } from '../../records/connection.ts';
import { defineRule } from '../define-rule.ts';
import { withConnection } from '../overlay.ts';
import type { Voice } from '../rule-words.ts';
import { workDone } from '../work-done.ts';

/** Common practice, no source: the length of one taped joint. */
export const jointMillimetresMin = 25;

const words = {
  summary: () => `Joints in one bundle stand at least ${jointMillimetresMin} mm apart.`,
  why: 'Joints side by side make a lump that chafes, and one failed cover then shorts two wires.',
  says: {
    'too close': (joint: { lead: DeviceLead; distance: number; least: number }, voice: Voice) => ({
      what: `The joint of the ${voice.lead(joint.lead)} lead is ${joint.distance} mm from the next one; ${joint.least} mm or more is wanted.`,
      whatToDo: 'Move one joint along the bundle.',
    }),
  },
};

/** Joints in one bundle stand at least 25 mm apart. */
export const splicesAreStaggered = defineRule({
  id: 'splices-are-staggered',
  group: 'workmanship',
  severity: 'advise',
  source: 'FAA AC 43.13-1B ch. 11 (splices in a bundle are staggered); the 25 mm is common practice, no source',
  words,
  check: ({ job }) =>
    (workDone(job).connections ?? []).flatMap(({ lead, nextJointMillimetres: distance }) =>
      distance === undefined || distance >= jointMillimetresMin
        ? []
        : [{ at: lead, says: 'too close', figures: { lead, distance, least: jointMillimetresMin } }],
    ),
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
});
