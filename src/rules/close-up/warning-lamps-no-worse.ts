import { defineRule } from '../define-rule.ts';
import { workDone } from '../work-done.ts';

/** Lower case and single spaces, so that a second wording of the same thing is not taken for news. */
const plain = (text: string): string => text.toLowerCase().replace(/\s+/g, ' ').trim();

const words = {
  summary: () => 'No warning lamp is lit after the work that was not lit before.',
  why: 'A lamp that came on during the work is ours until proven otherwise.',
  says: {
    'newly lit': (lamp: { name: string }) => ({
      what: `The warning lamp "${lamp.name}" is lit after the work and was not before.`,
      whatToDo: 'Find the cause and put it right before the vehicle leaves.',
    }),
  },
};

/** No warning lamp is lit after the work that was not lit before. */
export const warningLampsNoWorse = defineRule({
  id: 'warning-lamps-no-worse',
  group: 'close-up',
  severity: 'block',
  source: 'common practice, no source',
  words,
  check: ({ job }) => {
    const { before, after } = workDone(job);
    if (before === undefined || after === undefined) return [];
    const known = new Set(before.warningLamps.map(plain));
    return after.warningLamps
      .filter((name) => !known.has(plain(name)))
      .map((name) => ({ at: name, says: 'newly lit', figures: { name } }));
  },
  examples: [
    {
      name: 'the same lamp before and after',
      change: (job) => ({
        ...job,
        before: { ...job.before, warningLamps: ['tyre pressure'] },
        after: { ...job.after, warningLamps: ['Tyre  pressure'] },
      }),
      finds: [],
    },
    {
      name: 'a lamp gone out',
      change: (job) => ({
        ...job,
        before: { ...job.before, warningLamps: ['tyre pressure'] },
        after: { ...job.after, warningLamps: [] },
      }),
      finds: [],
    },
    {
      name: 'an air-bag lamp is new',
      change: (job) => ({
        ...job,
        before: { ...job.before, warningLamps: ['tyre pressure'] },
        after: { ...job.after, warningLamps: ['tyre pressure', 'air bag'] },
      }),
      finds: [
        {
          at: 'air bag',
          severity: 'block',
          what: 'The warning lamp "air bag" is lit after the work and was not before.',
          whatToDo: 'Find the cause and put it right before the vehicle leaves.',
        },
      ],
    },
  ],
});
