import { handRules } from './hand-rules.ts';
import type { Rule } from './rule.ts';

/** Every trade rule, in the order of the work: wiring, workmanship, placement, close-up, record. */
export const rules: readonly Rule[] = [...handRules];
