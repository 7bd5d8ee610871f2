import { openDocuments } from '../pricing/aged-balances.ts';
import type { CalendarDate } from '../quantities/calendar-date.ts';
import type { Job } from '../records/job.ts';
import type { LedgerEntry } from '../records/ledger-entry.ts';
import { rootFindings } from '../rules/root-findings.ts';
import { billingEntry, readIssued } from '../storage/issued.ts';
import { listJobs } from '../storage/jobs.ts';
import { readLedger } from '../storage/ledger.ts';
import type { OpenBook } from '../storage/open-book.ts';
import { readPayments } from '../storage/record-payment.ts';
import { signatureState } from '../storage/signature-state.ts';
import { vehicleName } from '../words/vehicle-name.ts';
import { examineJob } from './examine-job.ts';

/** How far a job has come, in the order in which it gets there. */
export const jobStates = ['begun', 'recorded', 'handed over', 'signed', 'billed', 'paid'] as const;
export type JobState = (typeof jobStates)[number];

/** A job with how far it has come, and what is still open on it. */
export type ListedJob = {
  readonly job: string;
  readonly day: CalendarDate;
  readonly vehicle: string;
  readonly payer: string | null;
  readonly state: JobState;
  readonly invoice: string | null;
  readonly open: readonly string[];
};

type Bill = { readonly number: string; readonly unpaid: boolean };

function billOf(job: string, ledger: readonly LedgerEntry[], unpaid: ReadonlySet<string>): Bill | null {
  const entry = billingEntry(ledger, job);
  return entry === null ? null : { number: entry.number, unpaid: unpaid.has(entry.number) };
}

async function listed(book: OpenBook, job: Job, ledger: readonly LedgerEntry[], bill: Bill | null): Promise<ListedJob> {
  const handedOver = ledger.some((entry) => entry.event === 'handed over' && entry.job === job.id);
  const signature = signatureState(job);
  const isSigned = signature === 'stands' || signature === 'not bound';
  const findings = (await examineJob(book, job)).open;
  const isRecorded = findings.every((finding) => finding.rule !== 'record-is-complete');
  const count = rootFindings(job, findings).length;
  const open = [
    ...(count === 0 ? [] : [count === 1 ? '1 finding' : `${count} findings`]),
    ...(handedOver ? [] : ['not handed over']),
    ...(signature === 'void' ? ['signature void'] : isSigned ? [] : ['unsigned']),
    ...(bill === null ? ['unbilled'] : bill.unpaid ? ['unpaid'] : []),
  ];
  const reached: JobState =
    bill !== null
      ? bill.unpaid
        ? 'billed'
        : 'paid'
      : handedOver
        ? isSigned
          ? 'signed'
          : 'handed over'
        : isRecorded
          ? 'recorded'
          : 'begun';
  return {
    job: job.id,
    day: job.day,
    vehicle: vehicleName(job.vehicle) || 'no vehicle yet',
    payer: job.identity.payer ?? null,
    state: reached,
    invoice: bill?.number ?? null,
    open,
  };
}

/**
 * Every job of a span of days with how far it has come, oldest first.
 * @param book the open book
 * @param span first and last day, either absent for no limit
 * @param today the day up to which payments count
 */
export async function listedJobs(
  book: OpenBook,
  span: { readonly from?: string; readonly to?: string },
  today: CalendarDate,
): Promise<readonly ListedJob[]> {
  const ledger = readLedger(book);
  const invoices = readIssued(book).map((each) => each.invoice);
  const unpaid = new Set(
    openDocuments(invoices, readPayments(book), today)
      .filter((each) => each.balanceMinorUnits > 0)
      .map((each) => each.number),
  );
  const all: ListedJob[] = [];
  for (const job of listJobs(book, span)) all.push(await listed(book, job, ledger, billOf(job.id, ledger, unpaid)));
  return all;
}
