import { rules } from '../../rules/index.ts';
import type { RulesInWords } from '../rules-in-words.ts';

/** What every trade rule says, in English: as it stands in the rule's own file. */
export const rulesEn = Object.fromEntries(rules.map((rule) => [rule.id, rule.words])) as unknown as RulesInWords;
