import type { Job } from '../records/job.ts';
import type { Around, Question } from './question.ts';

/** A question for one line of text; an empty answer records nothing. */
export function textQuestion(
  id: string,
  message: string | ((around: Around, job: Job) => string),
  set: (job: Job, text: string, around: Around) => Job,
  options: {
    readonly applies?: (job: Job) => boolean;
    readonly usual?: (job: Job, around: Around) => string;
    readonly check?: (text: string) => string | null;
  } = {},
): Question {
  return {
    id,
    applies: options.applies ?? (() => true),
    ask: async (job, ask, around) => {
      const words = typeof message === 'string' ? message : message(around, job);
      const text = (await ask.text(words, options.usual?.(job, around) ?? '', options.check)).trim();
      return text === '' ? job : set(job, text, around);
    },
  };
}
