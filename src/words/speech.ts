import type { Reading } from '../records/reading.ts';
import type { Voice } from '../rules/rule-words.ts';
import type { EvidenceWords } from './evidence-words.ts';

/** How facts are said in one language about one vehicle: everything that a rule's sentences need, and more. */
export type Speech = Voice & {
  readonly evidence: EvidenceWords;
  /** what ends the drive, from which a waiting time is counted */
  readonly endOfDrive: string;
  /** seconds as a person says them: "90 s", "12 min" */
  readonly wait: (seconds: number) => string;
  /** some readings, each key position once */
  readonly readings: (readings: readonly Reading[]) => string;
  /** one decimal: "3.1" */
  readonly tenths: (value: number) => string;
};
