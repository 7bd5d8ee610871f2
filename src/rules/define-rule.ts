import type { Rule } from './rule.ts';
import type { RuleWords } from './rule-words.ts';

/**
 * A rule as written, its hits checked against its own words by type.
 * @param rule the rule; its file is named after its id
 */
export function defineRule<const Id extends string, Words extends RuleWords>(rule: Rule<Id, Words>): Rule<Id, Words> {
  return rule;
}
