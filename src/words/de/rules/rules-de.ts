import type { RulesInWords } from '../../rules-in-words.ts';
import { closeUpRulesDe } from './close-up-rules-de.ts';
import { placementRulesDe } from './placement-rules-de.ts';
import { recordRulesDe } from './record-rules-de.ts';
import { wiringProtectionDe } from './wiring-protection-de.ts';
import { wiringReadingsDe } from './wiring-readings-de.ts';
import { workmanshipRulesDe } from './workmanship-rules-de.ts';

/** What every trade rule says, in German. */
export const rulesDe: RulesInWords = {
  ...wiringReadingsDe,
  ...wiringProtectionDe,
  ...workmanshipRulesDe,
  ...placementRulesDe,
  ...closeUpRulesDe,
  ...recordRulesDe,
};
