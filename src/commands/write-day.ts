import type { FinishedDay } from '../operations/finish-day.ts';
import { writeMoney } from '../quantities/write-money.ts';
import { writeFinding } from './write-finding.ts';

/**
 * The finished day for the terminal.
 * @param finished what became of each job
 * @param locale how money is written
 */
export function writeDay(finished: FinishedDay, locale: string): string {
  if (finished.jobs.length === 0) return `There is no job on ${finished.day}.`;
  const blocks = finished.jobs.map((job) =>
    [
      `${job.job}  ${job.vehicle}`,
      ...(job.sheet === null ? [] : [`  sheet    ${job.sheet}`]),
      ...(job.invoice === null
        ? []
        : [
            `  invoice  ${job.invoice}  ${writeMoney(job.grossMinorUnits ?? 0, job.currency, locale)}  ${job.invoicePdf}`,
          ]),
      `  open     ${job.open.length === 0 ? 'nothing' : job.open.join(', ')}`,
      ...job.findings.map((finding) => writeFinding(finding)),
    ].join('\n'),
  );
  const done = finished.jobs.filter((job) => job.state === 'done').length;
  return [...blocks, `${finished.day}: ${done} of ${finished.jobs.length} jobs handed over and billed.`].join('\n\n');
}
