import { handRules } from './hand-rules.ts';
import type { Rule } from './rule.ts';
import { verdictMatchesTheReadings } from './verdict-matches-the-readings.ts';

/** Every trade rule, in the order of the work: wiring, workmanship, placement, close-up, record. */
export const rules: readonly Rule[] = [verdictMatchesTheReadings, ...handRules];
