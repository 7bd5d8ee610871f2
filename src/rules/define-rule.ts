import type { JobFacts, RuleExample, Severity } from './rule.ts';
import type { Hit, RuleWords } from './rule-words.ts';

/** A trade rule that finds kinds and figures; its English words stand beside it, other languages translate the same functions. */
export type SpokenRule<Id extends string = string, Words extends RuleWords = RuleWords> = {
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
export type AnyRule = Omit<SpokenRule, 'check'> & {
  readonly check: (facts: JobFacts) => readonly {
    readonly at: string;
    readonly says: string;
    readonly severity?: Severity;
    readonly figures?: unknown;
  }[];
};

/**
 * A rule as written, its hits checked against its own words by type.
 * @param rule the rule; its file is named after its id
 */
export function defineRule<const Id extends string, Words extends RuleWords>(
  rule: SpokenRule<Id, Words>,
): SpokenRule<Id, Words> {
  return rule;
}
