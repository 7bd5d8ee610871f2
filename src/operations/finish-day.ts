import type { Problem } from '../problem.ts';
import type { CalendarDate } from '../quantities/calendar-date.ts';
import type { Job } from '../records/job.ts';
import { rootFindings } from '../rules/root-findings.ts';
import { issuedForJob } from '../storage/issued.ts';
import { jobsOnDay } from '../storage/jobs.ts';
import type { OpenBook } from '../storage/open-book.ts';
import { signatureState } from '../storage/signature-state.ts';
import { type TerminalFinding, terminalFinding } from '../words/terminal-finding.ts';
import { vehicleName } from '../words/vehicle-name.ts';
import { billGroups } from './bill-groups.ts';
import { type ExaminedJob, examineJob } from './examine-job.ts';
import { finishInterrupted } from './finish-interrupted.ts';
import { handOverJob } from './hand-over-job.ts';
import { invoiceGroups } from './invoice-groups.ts';
import type { Moment } from './moment.ts';

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
  readonly findings: readonly TerminalFinding[];
};

export type FinishedDay = { readonly day: CalendarDate; readonly jobs: readonly FinishedJob[] };

/** A finished day, and a sentence for each document that is issued without its structured file. */
export type DayWithLacking = { readonly finished: FinishedDay; readonly lacking: readonly string[] };

function stillOpen(examined: ExaminedJob, billed: boolean, refusal: Problem | undefined): readonly string[] {
  const { signature } = examined.job;
  const faults = rootFindings(examined.job, examined.open).length;
  const state = signatureState(examined.job);
  return [
    ...(faults > 0 ? [`${faults} finding${faults === 1 ? '' : 's'}`] : []),
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
 * @param moment when, and in whose number series
 */
export async function finishDay(book: OpenBook, day: CalendarDate, moment: Moment): Promise<DayWithLacking> {
  const examinedJobs: ExaminedJob[] = [];
  for (const job of await jobsOnDay(book, day)) examinedJobs.push(await examineJob(book, job));
  const sound = examinedJobs.filter((examined) => examined.open.length === 0);
  const sheets = new Map<string, string>();
  for (const examined of sound) sheets.set(examined.job.id, await handOverJob(book, examined, moment));
  await finishInterrupted(book, moment.now);
  const unbilled: Job[] = [];
  for (const examined of sound) if ((await issuedForJob(book, examined.job.id)) === null) unbilled.push(examined.job);
  // what one bill lacks must not keep the day's other customers waiting for theirs
  const { stopped, lacking } = await billGroups(book, invoiceGroups(book, unbilled, null), moment, day);
  const jobs: FinishedJob[] = [];
  for (const examined of examinedJobs) {
    const issued = await issuedForJob(book, examined.job.id);
    const refusal = stopped.find((each) => each.jobs.includes(examined.job))?.problem;
    jobs.push({
      job: examined.job.id,
      vehicle: vehicleName(examined.job.vehicle),
      state: examined.open.length > 0 || refusal !== undefined ? 'blocked' : 'done',
      sheet: sheets.get(examined.job.id) ?? null,
      invoice: issued?.number ?? null,
      invoicePdf: issued?.pdfPath ?? null,
      // with the rounding amount, where there is one: what the payer is asked for
      grossMinorUnits:
        issued === null ? null : issued.invoice.totals.dueMinorUnits + issued.invoice.totals.paidMinorUnits,
      currency: book.book.currency,
      open: stillOpen(examined, issued !== null, refusal),
      findings: rootFindings(examined.job, examined.open).map(({ finding }) =>
        terminalFinding(finding, examined.job.vehicle),
      ),
    });
  }
  return { finished: { day, jobs }, lacking };
}
