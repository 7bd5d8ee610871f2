import { defineRule } from '../define-rule.ts';
import { workDone } from '../work-done.ts';

/** Lower case and single spaces, so that a second wording of the same thing is not taken for news. */
const plain = (text: string): string => text.toLowerCase().replace(/\s+/g, ' ').trim();

const words = {
  summary: () => 'Everything that worked before the work works after it.',
  why: 'What the work broke is found by the driver, at night.',
  says: {
    'does not work': (work: { function: string }) => ({
      what: `"${work.function}" does not work after the work and was not recorded so before.`,
      whatToDo: 'Find the cause and put it right before the vehicle leaves.',
    }),
  },
};

/** Everything that worked before the work works after it. */
export const functionsWorkAgain = defineRule({
  id: 'functions-work-again',
  group: 'close-up',
  severity: 'block',
  source: 'common practice, no source',
  words,
  check: ({ job }) => {
    const { before, after } = workDone(job);
    if (before === undefined || after === undefined) return [];
    const known = new Set(before.functionsNotWorking.map(plain));
    return after.functionsNotWorking
      .filter((name) => !known.has(plain(name)))
      .map((name) => ({ at: name, says: 'does not work', figures: { function: name } }));
  },
  examples: [
    {
      name: 'radio was dead before',
      change: (job) => ({
        ...job,
        before: { ...job.before, functionsNotWorking: ['radio'] },
        after: { ...job.after, functionsNotWorking: ['radio'] },
      }),
      finds: [],
    },
    {
      name: 'the horn is newly dead',
      change: (job) => ({
        ...job,
        before: { ...job.before, functionsNotWorking: [] },
        after: { ...job.after, functionsNotWorking: ['horn'] },
      }),
      finds: [
        {
          at: 'horn',
          severity: 'block',
          what: '"horn" does not work after the work and was not recorded so before.',
          whatToDo: 'Find the cause and put it right before the vehicle leaves.',
        },
      ],
    },
  ],
});
