import { closeUpRules } from './close-up/close-up-rules.ts';
import { placementRules } from './placement/placement-rules.ts';
import { recordRules } from './record/record-rules.ts';
import type { AnyRule } from './rule.ts';
import { wiringRules } from './wiring/wiring-rules.ts';
import { workmanshipRules } from './workmanship/workmanship-rules.ts';

/** Every trade rule, in the order in which a checklist reads. */
export const rules: readonly AnyRule[] = [
  ...wiringRules,
  ...workmanshipRules,
  ...placementRules,
  ...closeUpRules,
  ...recordRules,
];
