import type { World } from '../commands/command.ts';
import { writeFinding } from '../commands/write-finding.ts';
import type { Problem } from '../problem.ts';
import type { CalendarDate } from '../quantities/calendar-date.ts';
import { writeMoney } from '../quantities/write-money.ts';
import type { Job } from '../records/job.ts';
import type { Finding } from '../rules/rule.ts';
import { issuedForJob } from '../storage/issued.ts';
import { jobsOnDay } from '../storage/jobs.ts';
import type { OpenBook } from '../storage/open-book.ts';
import { signatureState } from '../storage/signature-state.ts';
import { billGroups, finishInterrupted, invoiceGroups } from './bill-jobs.ts';
import { type ExaminedJob, examineJob } from './examine-job.ts';
import { handOverJob } from './hand-over-job.ts';

/** What became of one job of the day. */
export type FinishedJob = {
  readonly job: string;
  readonly vehicle: string;
  readonly state: 'done' | 'blocked';
  readonly sheet: string | null;
  readonly invoice: string | null;
  readonly invoicePdf: string | null;
  readonly grossMinorUnits: number | null;
  readonly currency: string;
  /** what is still open: findings, signature, bill */
  readonly open: readonly string[];
  readonly findings: readonly Finding[];
};

export type FinishedDay = { readonly day: CalendarDate; readonly jobs: readonly FinishedJob[] };

function vehicleName(job: Job): string {
  const { maker, model, plate, unitNumber } = job.vehicle;
  return [maker, model, plate ?? unitNumber].filter((word) => word !== undefined).join(' ');
}

function stillOpen(examined: ExaminedJob, billed: boolean, refusal: Problem | undefined): readonly string[] {
  const { signature } = examined.job;
  const state = signatureState(examined.job);
  return [
    ...(examined.open.length > 0 ? [`${examined.open.length} finding${examined.open.length === 1 ? '' : 's'}`] : []),
    ...(state === 'none'
      ? [`unsigned${signature?.noSignatureBecause === undefined ? '' : ` (${signature.noSignatureBecause})`}`]
      : []),
    ...(state === 'void' ? ['signature void: the record was changed after signing'] : []),
    ...(state !== 'void' && signature?.answer === 'refuses'
      ? [`refused: ${signature.remark ?? 'no reason given'}`]
      : []),
    ...(billed ? [] : [refusal === undefined ? 'unbilled' : `unbilled: ${refusal.message}`]),
  ];
}

/**
 * Finishes a day: checks all its jobs, prints the sheets and issues the invoices of those that nothing stops.
 * @param book the open book
 * @param day the day
 * @param world the outside world
 */
export async function finishDay(book: OpenBook, day: CalendarDate, world: World): Promise<FinishedDay> {
  const examinedJobs: ExaminedJob[] = [];
  for (const job of await jobsOnDay(book, day)) examinedJobs.push(await examineJob(book, job));
  const sound = examinedJobs.filter((examined) => examined.open.length === 0);
  const sheets = new Map<string, string>();
  for (const examined of sound) sheets.set(examined.job.id, await handOverJob(book, examined, world));
  await finishInterrupted(book, world);
  const unbilled: Job[] = [];
  for (const examined of sound) if ((await issuedForJob(book, examined.job.id)) === null) unbilled.push(examined.job);
  // what one bill lacks must not keep the day's other customers waiting for theirs
  const { stopped } = await billGroups(book, invoiceGroups(book, unbilled, null), day, world);
  const jobs: FinishedJob[] = [];
  for (const examined of examinedJobs) {
    const issued = await issuedForJob(book, examined.job.id);
    const refusal = stopped.find((each) => each.jobs.includes(examined.job))?.problem;
    jobs.push({
      job: examined.job.id,
      vehicle: vehicleName(examined.job),
      state: examined.open.length > 0 || refusal !== undefined ? 'blocked' : 'done',
      sheet: sheets.get(examined.job.id) ?? null,
      invoice: issued?.number ?? null,
      invoicePdf: issued?.pdfPath ?? null,
      // with the rounding amount, where there is one: what the payer is asked for
      grossMinorUnits:
        issued === null ? null : issued.invoice.totals.dueMinorUnits + issued.invoice.totals.paidMinorUnits,
      currency: book.book.currency,
      open: stillOpen(examined, issued !== null, refusal),
      findings: examined.open,
    });
  }
  return { day, jobs };
}

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
