import type { RuleWordsOf } from '../../../rules/rule-words.ts';
import type { wiringRules } from '../../../rules/wiring/wiring-rules.ts';
import { wiringProtectionEs } from './wiring-protection-es.ts';
import { wiringReadingsEs } from './wiring-readings-es.ts';

/** What the rules of wiring say, in Spanish. */
export const wiringRulesEs: RuleWordsOf<typeof wiringRules> = { ...wiringReadingsEs, ...wiringProtectionEs };
