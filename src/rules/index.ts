import { closeUpRules } from './close-up/close-up-rules.ts';
import type { AnyRule } from './define-rule.ts';
import { inEnglish } from './in-english.ts';
import { placementRules } from './placement/placement-rules.ts';
import { recordRules } from './record/record-rules.ts';
import type { Rule } from './rule.ts';
import { wiringRules } from './wiring/wiring-rules.ts';
import { workmanshipRules } from './workmanship/workmanship-rules.ts';

/** Every trade rule, in the order in which a checklist reads. */
export const rules: readonly Rule[] = [
  ...wiringRules,
  ...workmanshipRules,
  ...placementRules,
  ...closeUpRules,
  ...recordRules,
].map((each: Rule | AnyRule) => ('words' in each ? inEnglish(each) : each));
