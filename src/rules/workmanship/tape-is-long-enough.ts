import type { DeviceLead } from '../../records/connection.ts';
import { defineRule } from '../define-rule.ts';
import { withConnection } from '../overlay.ts';
import type { Hit, Voice } from '../rule-words.ts';
import { workDone } from '../work-done.ts';

/** Common practice, no source: one inch. */
export const tapeMillimetresMin = 25;

const words = {
  summary: () => `A taped joint has at least ${tapeMillimetresMin} mm of tape.`,
  why: 'Short tape peels back and leaves the ends of the joint bare.',
  says: {
    'not recorded': (joint: { lead: DeviceLead; least: number }, voice: Voice) => ({
      what: `The length of the tape on the ${voice.lead(joint.lead)} lead is not recorded; ${joint.least} mm or more is wanted.`,
      whatToDo: 'Measure the tape and record it.',
    }),
    'too short': (joint: { lead: DeviceLead; length: number; least: number }, voice: Voice) => ({
      what: `The tape on the ${voice.lead(joint.lead)} lead is ${joint.length} mm long; ${joint.least} mm or more is wanted.`,
      whatToDo: `Tape again over at least ${joint.least} mm (1 in), past both ends of the bare wire.`,
    }),
  },
};

/** A taped joint has at least 25 mm of tape. */
export const tapeIsLongEnough = defineRule({
  id: 'tape-is-long-enough',
  group: 'workmanship',
  severity: 'reason',
  source: 'common practice, no source (25 mm, one inch)',
  words,
  check: ({ job }) =>
    (workDone(job).connections ?? []).flatMap(
      ({ lead, covered, tapeMillimetres: length }): readonly Hit<typeof words>[] => {
        if (covered !== 'tape') return [];
        const least = tapeMillimetresMin;
        if (length === undefined)
          return [{ at: lead, says: 'not recorded', figures: { lead, least }, severity: 'advise' }];
        return length >= least ? [] : [{ at: lead, says: 'too short', figures: { lead, length, least } }];
      },
    ),
  examples: [
    { name: 'tape of 25 mm', change: withConnection('supply', { covered: 'tape', tapeMillimetres: 25 }), finds: [] },
    {
      name: 'tape of 24 mm',
      change: withConnection('supply', { covered: 'tape', tapeMillimetres: 24 }),
      finds: [
        {
          at: 'supply',
          severity: 'reason',
          what: 'The tape on the supply lead is 24 mm long; 25 mm or more is wanted.',
          whatToDo: 'Tape again over at least 25 mm (1 in), past both ends of the bare wire.',
        },
      ],
    },
    {
      name: 'tape of unknown length',
      change: withConnection('supply', { covered: 'tape', tapeMillimetres: undefined }),
      finds: [
        {
          at: 'supply',
          severity: 'advise',
          what: 'The length of the tape on the supply lead is not recorded; 25 mm or more is wanted.',
          whatToDo: 'Measure the tape and record it.',
        },
      ],
    },
  ],
});
