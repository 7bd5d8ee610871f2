import type { TerminalFinding } from '../words/terminal-finding.ts';

/**
 * A finding in short lines: what, why, what to do or the reason given (both for a block, which no reason excuses), and the rule with its source.
 * @param finding the finding in words
 * @param answer the installer's written reason, or null
 */
export function writeFinding(finding: TerminalFinding, answer: string | null = null): string {
  const place = finding.at === '' ? '' : ` (${finding.at})`;
  return [
    `  ${finding.severity.toUpperCase()}${place}: ${finding.what}`,
    `    why:   ${finding.why}`,
    // no reason excuses a block: what to do still stands
    ...(answer === null || finding.severity === 'block' ? [`    to do: ${finding.whatToDo}`] : []),
    ...(answer === null ? [] : [`    reason given: ${answer}`]),
    `    rule:  ${finding.rule} [${finding.source}]`,
  ].join('\n');
}
