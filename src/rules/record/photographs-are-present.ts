import { defineRule } from '../define-rule.ts';

const words = {
  summary: () => 'Every photograph that the record names exists.',
  why: 'The sheet would speak of a picture that nobody can see.',
  says: {
    'not in the folder': (photograph: { file: string; job: string }) => ({
      what: `The photograph ${photograph.file} is not in the job's folder.`,
      whatToDo: `Put it into photos/${photograph.job}/, or take it off the record.`,
    }),
  },
};

/** Every photograph that the record names exists. */
export const photographsArePresent = defineRule({
  id: 'photographs-are-present',
  group: 'record',
  severity: 'block',
  source: 'common practice, no source',
  words,
  check: ({ job, photographFiles }) =>
    (job.photographs ?? [])
      .filter(({ file }) => !photographFiles.includes(file))
      .map(({ file }) => ({ at: file, says: 'not in the folder', figures: { file, job: job.id } })),
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
});
