import type { Severity } from './finding.ts';
import type { JobFacts } from './job-facts.ts';
import type { RuleExample } from './rule-example.ts';
import type { Hit, RuleWords } from './rule-words.ts';

/** A trade rule that finds kinds and figures; its English words stand beside it, other languages translate the same functions. */
export type Rule<Id extends string = string, Words extends RuleWords = RuleWords> = {
  readonly id: Id;
  readonly group: 'wiring' | 'workmanship' | 'placement' | 'close-up' | 'record';
  readonly severity: Severity;
  /** a published title and section, or "common practice, no source" */
  readonly source: string;
  readonly words: Words;
  readonly check: (facts: JobFacts) => readonly Hit<Words>[];
  readonly examples: readonly RuleExample[];
};

/** Any rule, whatever its words. */
export type AnyRule = Omit<Rule, 'check'> & {
  readonly check: (facts: JobFacts) => readonly {
    readonly at: string;
    readonly says: string;
    readonly severity?: Severity;
    readonly figures?: unknown;
  }[];
};
