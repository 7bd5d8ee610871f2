import type { TerminalFinding } from '../words/terminal-finding.ts';

/**
 * A finding as four short lines: what, why, what to do (or the reason given), and the rule with its source.
 * @param finding the finding in words
 * @param answer the installer's written reason, or null
 */
export function writeFinding(finding: TerminalFinding, answer: string | null = null): string {
  const place = finding.at === '' ? '' : ` (${finding.at})`;
  return [
    `  ${finding.severity.toUpperCase()}${place}: ${finding.what}`,
    `    why:   ${finding.why}`,
    answer === null ? `    to do: ${finding.whatToDo}` : `    reason given: ${answer}`,
    `    rule:  ${finding.rule} [${finding.source}]`,
  ].join('\n');
}
