import type { RulesInWords } from '../../rules-in-words.ts';
import { closeUpRulesEs } from './close-up-rules-es.ts';
import { placementRulesEs } from './placement-rules-es.ts';
import { recordRulesEs } from './record-rules-es.ts';
import { wiringRulesEs } from './wiring-rules-es.ts';
import { workmanshipRulesEs } from './workmanship-rules-es.ts';

/** What every trade rule says, in Spanish. */
export const rulesEs: RulesInWords = {
  ...wiringRulesEs,
  ...workmanshipRulesEs,
  ...placementRulesEs,
  ...closeUpRulesEs,
  ...recordRulesEs,
};
