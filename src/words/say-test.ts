import type { TestKind } from '../evidence/evidence.ts';
import type { Speech } from './speech.ts';

/** What a test of a role asks, in words: "reads the supply with the key out". */
export function sayTest(test: TestKind, speech: Speech): string {
  const words = speech.evidence.test;
  return test.kind === 'reads' ? words.reads(test.level, speech.where(test.key)) : words[test.kind];
}
