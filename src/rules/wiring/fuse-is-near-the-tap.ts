import { fuseDistanceMillimetresMax } from '../../electrics/assess-fuse.ts';
import type { Rule, RuleHit } from '../rule.ts';
import { workDone } from '../work-done.ts';

/** A fuse sits within 178 mm (7 in) of the joint. */
export const fuseIsNearTheTap: Rule = {
  id: 'fuse-is-near-the-tap',
  group: 'wiring',
  severity: 'reason',
  summary: 'A fuse sits within 178 mm (7 in) of the joint.',
  why: 'The lead before the fuse is unprotected.',
  source: '33 CFR 183.455(b)(1), a boat rule used as a yardstick',
  check: ({ job }) =>
    (workDone(job).connections ?? [])
      .filter((made) => (made.fuse?.distanceMillimetres ?? 0) > fuseDistanceMillimetresMax)
      .map(
        (made): RuleHit => ({
          at: made.lead,
          what: `The fuse of the ${made.lead} lead sits ${made.fuse?.distanceMillimetres} mm from the joint; ${fuseDistanceMillimetresMax} mm (7 in) at most.`,
          whatToDo: 'Move the fuse holder closer to the joint.',
        }),
      ),
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
};
