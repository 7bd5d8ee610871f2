import type { Rule, RuleHit } from './rule.ts';

/** The times of the visit are possible. */
export const timesArePossible: Rule = {
  id: 'times-are-possible',
  group: 'record',
  severity: 'reason',
  summary: 'The times of the visit are possible.',
  why: 'A bill for impossible hours is not paid.',
  source: 'common practice, no source',
  check: ({ job }) => {
    const { start, end } = job.labour ?? {};
    return start !== undefined && end !== undefined && end <= start
      ? [
          {
            at: 'labour',
            what: `The work ends (${end.slice(11)}) before it begins (${start.slice(11)}).`,
            whatToDo: 'Mend the times; a visit past midnight ends on the next day.',
          } satisfies RuleHit,
        ]
      : [];
  },
  examples: [
    {
      name: 'from 08:00 to 09:00',
      change: (job) => ({ ...job, labour: { start: '2026-11-24T08:00', end: '2026-11-24T09:00' } }),
      finds: [],
    },
    {
      name: 'from 09:00 to 08:00',
      change: (job) => ({ ...job, labour: { start: '2026-11-24T09:00', end: '2026-11-24T08:00' } }),
      finds: ['labour'],
    },
  ],
};
