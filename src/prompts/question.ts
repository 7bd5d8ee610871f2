import type { Evidence } from '../evidence/evidence.ts';
import type { Book } from '../records/book.ts';
import type { DeviceProfile } from '../records/device-profile.ts';
import type { Job } from '../records/job.ts';
import type { Payer } from '../records/payer.ts';
import type { RateCard } from '../records/rate-card.ts';

/** One entry of a list to choose from: what is stored, and how it is shown where that differs. */
export type Choice<T extends string = string> = T | { readonly value: T; readonly name: string };

/**
 * How a choice is shown.
 * @param choice one of a list
 */
export const nameOf = (choice: Choice): string => (typeof choice === 'string' ? choice : choice.name);

/**
 * What is stored when a choice is taken.
 * @param choice one of a list
 */
export const storedOf = <T extends string>(choice: Choice<T>): T =>
  typeof choice === 'string' ? choice : choice.value;

/** How a question reaches a person; the real ones use inquirer or plain lines, tests answer by themselves. */
export type Ask = {
  /** one line of text; `check` returns what is wrong with it, or null */
  readonly text: (message: string, usual: string, check?: (text: string) => string | null) => Promise<string>;
  readonly choose: <const T extends string>(
    message: string,
    choices: readonly Choice<T>[],
    usual: NoInfer<T>,
  ) => Promise<T>;
  readonly confirm: (message: string, usual: boolean) => Promise<boolean>;
  /** yes or no that must be typed, for facts nobody may pass over with Enter */
  readonly decide: (message: string) => Promise<boolean>;
  /** those of the items that are so */
  readonly tick: (message: string, items: readonly string[], usual: readonly string[]) => Promise<readonly string[]>;
};

/** What the questions may know of the world around the job. */
export type Around = {
  readonly book: Book;
  readonly rates: RateCard;
  readonly payers: () => readonly Payer[];
  readonly keepPayer: (payer: Payer) => void;
  readonly devices: readonly DeviceProfile[];
  readonly evidenceOf: (job: Job) => Evidence;
  readonly tell: (text: string) => void;
  /** the clock's HH:MM in the business's zone when the job is of today, else an empty text */
  readonly clock: string;
  /** names of the photographs that lie in the job's folder, and the folder */
  readonly photographs: (job: Job) => { readonly folder: string; readonly files: readonly string[] };
  /** what earlier jobs on such a vehicle found, one line each */
  readonly hints: (job: Job) => readonly string[];
};

/** One question of the interview: a few prompts about one thing; every answer is saved at once. */
export type Question = {
  readonly id: string;
  /** false when it does not apply to the job so far */
  readonly applies: (job: Job) => boolean;
  readonly ask: (job: Job, ask: Ask, around: Around) => Promise<Job>;
};

/** Thrown by `Ask` when the person wants the prompt before. */
export class GoBack extends Error {}
