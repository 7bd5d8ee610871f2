import { fuseDistanceMillimetresMax } from '../../electrics/assess-fuse.ts';
import type { DeviceLead } from '../../records/connection.ts';
import { defineRule } from '../define-rule.ts';
import type { Voice } from '../rule-words.ts';
import { workDone } from '../work-done.ts';

const words = {
  summary: () => `A fuse sits within ${fuseDistanceMillimetresMax} mm (7 in) of the joint.`,
  why: 'The lead before the fuse is unprotected.',
  says: {
    'too far': (fuse: { lead: DeviceLead; distance: number; most: number }, voice: Voice) => ({
      what: `The fuse of the ${voice.lead(fuse.lead)} lead sits ${fuse.distance} mm from the joint; ${fuse.most} mm (7 in) at most.`,
      whatToDo: 'Move the fuse holder closer to the joint.',
    }),
  },
};

/** A fuse sits within 178 mm (7 in) of the joint. */
export const fuseIsNearTheTap = defineRule({
  id: 'fuse-is-near-the-tap',
  group: 'wiring',
  severity: 'reason',
  source: '33 CFR 183.455(b)(1), a boat rule used as a yardstick',
  words,
  check: ({ job }) =>
    (workDone(job).connections ?? []).flatMap(({ lead, fuse }) => {
      const [distance, most] = [fuse?.distanceMillimetres ?? 0, fuseDistanceMillimetresMax];
      return distance <= most ? [] : [{ at: lead, says: 'too far', figures: { lead, distance, most } }];
    }),
  examples: [
    {
      name: '178 mm',
      change: (job) => ({
        ...job,
        connections: (job.connections ?? []).map((made) =>
          made.lead === 'supply' ? { ...made, fuse: { ratingAmperes: 3, distanceMillimetres: 178 } } : made,
        ),
      }),
      finds: [],
    },
    {
      name: '179 mm',
      change: (job) => ({
        ...job,
        connections: (job.connections ?? []).map((made) =>
          made.lead === 'supply' ? { ...made, fuse: { ratingAmperes: 3, distanceMillimetres: 179 } } : made,
        ),
      }),
      finds: [
        {
          at: 'supply',
          severity: 'reason',
          what: 'The fuse of the supply lead sits 179 mm from the joint; 178 mm (7 in) at most.',
          whatToDo: 'Move the fuse holder closer to the joint.',
        },
      ],
    },
  ],
});
