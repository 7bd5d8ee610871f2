import { withConnection } from '../overlay.ts';
import type { Rule } from '../rule.ts';
import { workDone } from '../work-done.ts';

/** Each fuse holder is closed with tape and tied, so that it cannot be pulled without a tool. */
export const fuseIsTapedAndTied: Rule = {
  id: 'fuse-is-taped-and-tied',
  group: 'workmanship',
  severity: 'reason',
  summary: 'Each fuse holder is closed with tape and tied, so that it cannot be pulled without a tool.',
  why: 'A holder that shakes open, or is pulled by a curious hand, is the commonest cause of a device gone silent.',
  source: 'common practice, no source',
  check: ({ job }) =>
    (workDone(job).connections ?? [])
      .filter((made) => made.fuse !== undefined && made.fuse.tapedAndTied === false)
      .map((made) => ({
        at: made.lead,
        what: `The fuse in the ${made.lead} lead is not taped and tied.`,
        whatToDo: 'Tape the holder shut and tie it to the harness.',
      })),
  examples: [
    {
      name: 'fuse taped and tied',
      change: withConnection('supply', { fuse: { ratingAmperes: 3, distanceMillimetres: 90, tapedAndTied: true } }),
      finds: [],
    },
    {
      name: 'fuse hanging open',
      change: withConnection('supply', { fuse: { ratingAmperes: 3, distanceMillimetres: 90, tapedAndTied: false } }),
      finds: [
        {
          at: 'supply',
          severity: 'reason',
          what: 'The fuse in the supply lead is not taped and tied.',
          whatToDo: 'Tape the holder shut and tie it to the harness.',
        },
      ],
    },
  ],
};
