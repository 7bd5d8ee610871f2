import { withConnection } from '../overlay.ts';
import type { Rule, RuleHit } from '../rule.ts';
import { workDone } from '../work-done.ts';

/** Common practice, no source: one inch. */
const tapeMillimetresMin = 25;

/** A taped joint has at least 25 mm of tape. */
export const tapeIsLongEnough: Rule = {
  id: 'tape-is-long-enough',
  group: 'workmanship',
  severity: 'reason',
  summary: 'A taped joint has at least 25 mm of tape.',
  why: 'Short tape peels back and leaves the ends of the joint bare.',
  source: 'common practice, no source (25 mm, one inch)',
  check: ({ job }) =>
    (workDone(job).connections ?? []).flatMap((made): readonly RuleHit[] => {
      if (made.covered !== 'tape') return [];
      if (made.tapeMillimetres === undefined) {
        return [
          {
            at: made.lead,
            what: `The length of the tape on the ${made.lead} lead is not recorded; ${tapeMillimetresMin} mm or more is wanted.`,
            whatToDo: 'Measure the tape and record it.',
            severity: 'advise',
          },
        ];
      }
      if (made.tapeMillimetres >= tapeMillimetresMin) return [];
      return [
        {
          at: made.lead,
          what: `The tape on the ${made.lead} lead is ${made.tapeMillimetres} mm long; ${tapeMillimetresMin} mm or more is wanted.`,
          whatToDo: `Tape again over at least ${tapeMillimetresMin} mm (1 in), past both ends of the bare wire.`,
        },
      ];
    }),
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
  ],
};
