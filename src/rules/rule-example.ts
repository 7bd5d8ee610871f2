import type { JobInput } from '../records/job.ts';
import type { Severity } from './finding.ts';
import type { JobFacts } from './job-facts.ts';

/** A change laid over the known-sound job: top-level sections are replaced whole when a value is given as a function result. */
export type RuleExample = {
  /** "a tape of 10 mm" */
  readonly name: string;
  readonly change: (soundJob: JobInput) => JobInput;
  readonly facts?: Partial<
    Pick<JobFacts, 'earlier' | 'sameDevice' | 'photographFiles' | 'signatureVoid' | 'profile' | 'payer' | 'book'>
  >;
  /** what this rule finds, whole, in English; empty when it holds */
  readonly finds: readonly FoundExample[];
};

/** A finding as an example states it. */
export type FoundExample = {
  readonly at: string;
  readonly severity: Severity;
  readonly what: string;
  readonly whatToDo: string;
};
