import type { Rule, RuleHit } from '../rule.ts';

/** Every photograph that the record names exists. */
export const photographsArePresent: Rule = {
  id: 'photographs-are-present',
  group: 'record',
  severity: 'block',
  summary: 'Every photograph that the record names exists.',
  why: 'The sheet would speak of a picture that nobody can see.',
  source: 'common practice, no source',
  check: ({ job, photographFiles }) =>
    (job.photographs ?? [])
      .filter((photograph) => !photographFiles.includes(photograph.file))
      .map(
        (photograph): RuleHit => ({
          at: photograph.file,
          what: `The photograph ${photograph.file} is not in the job's folder.`,
          whatToDo: `Put it into photos/${job.id}/, or take it off the record.`,
        }),
      ),
  examples: [
    { name: 'none named', change: (job) => ({ ...job, photographs: [] }), finds: [] },
    {
      name: 'one that is not there',
      change: (job) => ({ ...job, photographs: [{ file: 'joint.jpg', shows: 'joint' }] }),
      facts: { photographFiles: [] },
      finds: [
        {
          at: 'joint.jpg',
          severity: 'block',
          what: "The photograph joint.jpg is not in the job's folder.",
          whatToDo: 'Put it into photos/2026-11-24-KX4D/, or take it off the record.',
        },
      ],
    },
  ],
};
