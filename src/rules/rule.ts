import type { Evidence } from '../evidence/evidence.ts';
import type { Book } from '../records/book.ts';
import type { DeviceProfile } from '../records/device-profile.ts';
import type { Job, JobInput } from '../records/job.ts';
import type { Payer } from '../records/payer.ts';

/** What a rule may look at. Everything is data; nothing is read while checking. */
export type JobFacts = {
  readonly job: Job;
  readonly evidence: Evidence;
  readonly book: Book;
  /** null when the job names no device yet */
  readonly profile: DeviceProfile | null;
  readonly payer: Payer | null;
  /** earlier jobs on the same vehicle (by VIN, else plate), oldest first */
  readonly earlier: readonly Job[];
  /** other jobs that fitted a device of the same serial or IMEI, or took it out */
  readonly sameDevice: readonly Job[];
  /** names of the photographs that exist in the job's folder */
  readonly photographFiles: readonly string[];
  /** true when the record says something else than when it was signed */
  readonly signatureVoid?: boolean;
};

export type Severity = 'block' | 'reason' | 'advise';

/** What a rule has to say of a job. */
export type Finding = {
  readonly rule: string;
  readonly severity: Severity;
  /** the place in the job: a probe point, a lead, a panel; '' for the whole job */
  readonly at: string;
  /** what is wrong, with the figures */
  readonly what: string;
  /** why it matters */
  readonly why: string;
  /** what to do */
  readonly whatToDo: string;
  readonly source: string;
  /** the rule's message and the figures in it, for other languages */
  readonly says?: string;
  readonly figures?: unknown;
};

/** What `check` returns: the driver adds rule id, severity (unless given), why and source. */
export type RuleHit = {
  readonly at: string;
  readonly what: string;
  readonly whatToDo: string;
  readonly severity?: Severity;
  readonly says?: string;
  readonly figures?: unknown;
};

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

/** One trade rule; its file is named after its id, which states what should hold. */
export type Rule = {
  readonly id: string;
  readonly group: 'wiring' | 'workmanship' | 'placement' | 'close-up' | 'record';
  readonly severity: Severity;
  readonly summary: string;
  readonly why: string;
  /** a published title and section, or "common practice, no source" */
  readonly source: string;
  readonly check: (facts: JobFacts) => readonly RuleHit[];
  readonly examples: readonly RuleExample[];
};
