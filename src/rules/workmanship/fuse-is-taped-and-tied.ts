import type { DeviceLead } from '../../records/connection.ts';
import { defineRule } from '../define-rule.ts';
import { withConnection } from '../overlay.ts';
import type { Voice } from '../rule-words.ts';
import { workDone } from '../work-done.ts';

const words = {
  summary: () => 'Each fuse holder is closed with tape and tied, so that it cannot be pulled without a tool.',
  why: 'A holder that shakes open, or is pulled by a curious hand, is the commonest cause of a device gone silent.',
  says: {
    'not taped and tied': (joint: { lead: DeviceLead }, voice: Voice) => ({
      what: `The fuse in the ${voice.lead(joint.lead)} lead is not taped and tied.`,
      whatToDo: 'Tape the holder shut and tie it to the harness.',
    }),
  },
};

/** Each fuse holder is closed with tape and tied, so that it cannot be pulled without a tool. */
export const fuseIsTapedAndTied = defineRule({
  id: 'fuse-is-taped-and-tied',
  group: 'workmanship',
  severity: 'reason',
  source: 'common practice, no source',
  words,
  check: ({ job }) =>
    (workDone(job).connections ?? [])
      .filter((made) => made.fuse !== undefined && made.fuse.tapedAndTied === false)
      .map(({ lead }) => ({ at: lead, says: 'not taped and tied', figures: { lead } })),
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
});
