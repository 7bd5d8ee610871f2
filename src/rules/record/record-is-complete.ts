import { missingParts } from '../missing-parts.ts';
import type { Rule, RuleHit } from '../rule.ts';

/** The record holds what the sheet and the invoice need. */
export const recordIsComplete: Rule = {
  id: 'record-is-complete',
  group: 'record',
  severity: 'block',
  summary: 'The record holds what the sheet and the invoice need.',
  why: 'A sheet with holes protects nobody.',
  source: 'common practice, no source',
  check: ({ job }) =>
    missingParts(job).map(
      (part): RuleHit => ({
        at: part,
        what: `Not recorded yet: ${part}.`,
        whatToDo: 'Go on with `keyout fit`, or add it to the job file.',
      }),
    ),
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
};
