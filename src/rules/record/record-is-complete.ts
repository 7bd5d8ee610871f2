import { defineRule } from '../define-rule.ts';
import { missingParts, type RecordPart } from '../missing-parts.ts';

const words = {
  summary: () => 'The record holds what the sheet and the invoice need.',
  why: 'A sheet with holes protects nobody.',
  says: {
    'not recorded yet': (record: { part: RecordPart }) => ({
      what: `Not recorded yet: ${record.part}.`,
      whatToDo: 'Go on with `keyout fit`, or add it to the job file.',
    }),
  },
};

/** The record holds what the sheet and the invoice need. */
export const recordIsComplete = defineRule({
  id: 'record-is-complete',
  group: 'record',
  severity: 'block',
  source: 'common practice, no source',
  words,
  check: ({ job }) => missingParts(job).map((part) => ({ at: part, says: 'not recorded yet', figures: { part } })),
  examples: [
    { name: 'a whole record', change: (job) => job, finds: [] },
    {
      name: 'no placement',
      change: ({ placement: _placement, ...job }) => job,
      finds: [
        {
          at: 'placement',
          severity: 'block',
          what: 'Not recorded yet: placement.',
          whatToDo: 'Go on with `keyout fit`, or add it to the job file.',
        },
      ],
    },
  ],
});
