import type { Job } from '../records/job.ts';
import type { Question } from './question.ts';

/** True when work is done on the vehicle. */
export const isWorked = (job: Job): boolean => job.identity.visit !== 'wasted visit';
/** True when a device is connected on this visit. */
export const isFitted = (job: Job): boolean => job.identity.visit === 'new fit' || job.identity.visit === 'swap';

/** A question for one line of text; an empty answer records nothing. */
export function textQuestion(
  id: string,
  message: string,
  set: (job: Job, text: string) => Job,
  options: {
    readonly applies?: (job: Job) => boolean;
    readonly usual?: (job: Job, book: string) => string;
    readonly check?: (text: string) => string | null;
  } = {},
): Question {
  return {
    id,
    applies: options.applies ?? (() => true),
    ask: async (job, ask, around) => {
      const text = (
        await ask.text(message, options.usual?.(job, around.book.business.installer) ?? '', options.check)
      ).trim();
      return text === '' ? job : set(job, text);
    },
  };
}

/** A list typed with commas. */
export function listOf(text: string): string[] {
  return text
    .split(',')
    .map((each) => each.trim())
    .filter((each) => each !== '' && each !== 'none');
}
