import type { Finding } from '../rules/rule.ts';
import type { ExaminedJob } from './examine-job.ts';

/**
 * A finding as three short lines: what, why, what to do.
 * @param finding the finding
 * @param answer the installer's written reason, or null
 */
export function writeFinding(finding: Finding, answer: string | null = null): string {
  const place = finding.at === '' ? '' : ` (${finding.at})`;
  return [
    `  ${finding.severity.toUpperCase()}${place}: ${finding.what}`,
    `    why:   ${finding.why} [${finding.source}]`,
    answer === null ? `    to do: ${finding.whatToDo}` : `    reason given: ${answer}`,
  ].join('\n');
}

/**
 * The whole check of one job, for the terminal: every wire, then every finding.
 * @param examined the job with all that follows from it
 */
export function writeCheck(examined: ExaminedJob): string {
  const { job, facts, findings } = examined;
  const name = [job.vehicle.maker, job.vehicle.model, job.vehicle.plate ?? job.vehicle.unitNumber]
    .filter((word) => word !== undefined)
    .join(' ');
  const wires = facts.evidence.wires.flatMap((wire) => [
    `  ${wire.point.padEnd(4)} ${wire.sentence}`,
    ...(wire.agreement === 'contradiction'
      ? [`       The verdict "${wire.verdict}" is contradicted by the readings.`]
      : []),
    ...(wire.agreement === 'not proven' ? [`       The verdict "${wire.verdict}" is not proven yet.`] : []),
    ...(wire.conclusion.kind === 'open' && wire.conclusion.wants !== null
      ? [`       next: ${wire.conclusion.wants.sentence}`]
      : []),
    ...wire.traps.map((trap) => `       mind: ${trap.sentence}`),
  ]);
  const answerOf = (finding: Finding) =>
    job.answers.find((each) => each.rule === finding.rule && (each.at ?? '') === finding.at)?.reason ??
    job.answers.find((each) => each.rule === finding.rule && each.at === undefined)?.reason ??
    null;
  const lines = findings.map((finding) => writeFinding(finding, answerOf(finding)));
  return [
    `${job.id}  ${name}`,
    ...wires,
    ...(lines.length === 0 ? ['  No finding: every rule that applies holds.'] : lines),
  ].join('\n');
}
