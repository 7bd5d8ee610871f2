import type { Evidence } from '../evidence/evidence.ts';
import type { Book } from '../records/book.ts';
import type { DeviceProfile } from '../records/device-profile.ts';
import type { Job } from '../records/job.ts';
import type { RateCard } from '../records/rate-card.ts';

/** How a question reaches a person; the real one uses inquirer, tests answer by themselves. */
export type Ask = {
  readonly text: (message: string, usual: string, check?: (text: string) => string | null) => Promise<string>;
  readonly choose: (message: string, choices: readonly string[], usual: string) => Promise<string>;
  readonly confirm: (message: string, usual: boolean) => Promise<boolean>;
};

/** What the questions may know. */
export type Around = {
  readonly book: Book;
  readonly rates: RateCard;
  readonly payers: readonly string[];
  readonly devices: readonly DeviceProfile[];
  readonly evidenceOf: (job: Job) => Evidence;
  readonly tell: (text: string) => void;
};

/** One question of the interview: asked once, its answer saved at once. */
export type Question = {
  readonly id: string;
  /** false when it does not apply to the job so far */
  readonly applies: (job: Job) => boolean;
  readonly ask: (job: Job, ask: Ask, around: Around) => Promise<Job>;
};

/** Thrown by `Ask` when the person wants the question before. */
export class GoBack extends Error {}
