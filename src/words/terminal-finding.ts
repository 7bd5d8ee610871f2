import type { Finding } from '../rules/finding.ts';
import type { KeyWords } from './key-words.ts';
import { type SaidFinding, sayFinding } from './say-finding.ts';
import { terminalSpeech, terminalWords } from './terminal-speech.ts';

/** A finding with its words, as the terminal and `--json` print it. */
export type TerminalFinding = Pick<Finding, 'rule' | 'severity' | 'at' | 'source'> & SaidFinding;

/**
 * A finding in the words of the terminal.
 * @param finding the finding
 * @param vehicle what decides how its key positions are called
 */
export function terminalFinding(finding: Finding, vehicle: KeyWords): TerminalFinding {
  const { rule, severity, at, source } = finding;
  const { what, why, whatToDo } = sayFinding(finding, terminalWords.rules, terminalSpeech(vehicle));
  return { rule, severity, at, what, why, whatToDo, source };
}
