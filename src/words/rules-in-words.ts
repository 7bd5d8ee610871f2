import type { closeUpRules } from '../rules/close-up/close-up-rules.ts';
import type { placementRules } from '../rules/placement/placement-rules.ts';
import type { recordRules } from '../rules/record/record-rules.ts';
import type { RuleWordsOf } from '../rules/rule-words.ts';
import type { wiringRules } from '../rules/wiring/wiring-rules.ts';
import type { workmanshipRules } from '../rules/workmanship/workmanship-rules.ts';

/** What every trade rule says, in one language, by the rule's id. */
export type RulesInWords = RuleWordsOf<typeof wiringRules> &
  RuleWordsOf<typeof workmanshipRules> &
  RuleWordsOf<typeof placementRules> &
  RuleWordsOf<typeof closeUpRules> &
  RuleWordsOf<typeof recordRules>;
