import { billGroups } from '../operations/bill-groups.ts';
import { chosenJobs } from '../operations/chosen-jobs.ts';
import { draftInvoice } from '../operations/draft-invoice.ts';
import { examineJob } from '../operations/examine-job.ts';
import { finishInterrupted } from '../operations/finish-interrupted.ts';
import { invoiceGroups } from '../operations/invoice-groups.ts';
import { Problem } from '../problem.ts';
import { isCalendarDate } from '../quantities/calendar-date.ts';
import { writeMoney } from '../quantities/write-money.ts';
import type { IssuedInvoice } from '../records/issued-invoice.ts';
import { type IssuedDocument, issuedForJob } from '../storage/issued.ts';
import { openBook } from '../storage/open-book.ts';
import { terminalFinding } from '../words/terminal-finding.ts';
import { askForTrip } from './ask-for-trip.ts';
import type { Call, Command } from './command.ts';
import { failStopped } from './fail-stopped.ts';
import { momentOf } from './moment-of.ts';
import { writeFinding } from './write-finding.ts';

function writeDraft(invoice: IssuedInvoice, locale: string): string {
  const money = (minorUnits: number) => writeMoney(minorUnits, invoice.currency, locale);
  const { totals } = invoice;
  const row = (what: string, minorUnits: number) =>
    `  ${what.padEnd(52).slice(0, 52)} ${money(minorUnits).padStart(12)}`;
  const rows = invoice.lines.map((line) => `${row(line.what, line.netMinorUnits)}\n      ${line.because}`);
  return [
    `Quote for ${invoice.payer.name}: ${invoice.vehicles.map((vehicle) => vehicle.text).join('; ')}`,
    ...rows,
    ...invoice.allowances.map((each) =>
      row(each.because, each.charge ? each.amountMinorUnits : -each.amountMinorUnits),
    ),
    row('net', totals.netMinorUnits),
    ...invoice.taxes
      .filter((group) => group.taxMinorUnits !== 0)
      .map((group) => row(`${group.name}, ${group.ratePercent} %`, group.taxMinorUnits)),
    row('total', totals.grossMinorUnits),
    ...(totals.roundingMinorUnits === undefined ? [] : [row('rounding', totals.roundingMinorUnits)]),
    ...(totals.paidMinorUnits === 0 ? [] : [row('paid already', -totals.paidMinorUnits)]),
    ...(totals.dueMinorUnits === totals.grossMinorUnits ? [] : [row('due', totals.dueMinorUnits)]),
  ].join('\n');
}

function writeIssued({ number, invoice, pdfPath }: IssuedDocument, locale: string): string {
  return `${number}  ${writeMoney(invoice.totals.dueMinorUnits + invoice.totals.paidMinorUnits, invoice.currency, locale)}  ${pdfPath}`;
}

function perOf(call: Call): 'vehicle' | 'payer' | null {
  const { per } = call.options;
  if (per === undefined || per === 'vehicle' || per === 'payer') return per ?? null;
  throw new Problem(`"${per}" is no way to bill.`, 'keyout bill --per', 'Write "vehicle" or "payer".', 2);
}

/** `keyout bill [JOB…]`: issue invoices, one a vehicle or one a payer; `--draft` shows the same without issuing. */
export const bill: Command = {
  options: {
    day: { type: 'string', takes: 'DATE', help: 'the jobs of this day (default: today)' },
    per: { type: 'string', takes: 'WHAT', help: '"vehicle" or "payer" (default: as the payer wants)' },
    draft: { type: 'boolean', help: 'show what would be issued, issue nothing' },
  },
  run: async (call, world) => {
    const book = await openBook(world.bookFolder);
    const today = world.today(book.book.timeZone);
    const day = typeof call.options.day === 'string' ? call.options.day : today;
    if (!isCalendarDate(day))
      throw new Problem(`"${day}" is not a date that exists.`, 'keyout bill --day', 'Write it like 2026-11-24.', 2);
    const per = perOf(call);
    if (call.options.draft !== true) await finishInterrupted(book, world.now());
    await askForTrip(book, day, world);
    const ready = [];
    let stopped = 0;
    for (const job of await chosenJobs(book, call.words, day)) {
      const already = await issuedForJob(book, job.id);
      if (already !== null) {
        world.tell(`${job.id} is billed already: ${already.number}.`);
        continue;
      }
      const examined = await examineJob(book, job);
      if (examined.open.length > 0 && call.options.draft !== true) {
        stopped += 1;
        world.tell(
          [
            `${job.id} cannot be billed yet:`,
            ...examined.open.map((finding) => writeFinding(terminalFinding(finding, job.vehicle))),
          ].join('\n'),
        );
        continue;
      }
      ready.push(job);
    }
    const groups = invoiceGroups(book, ready, per);
    if (call.options.draft === true) {
      const drafts = [];
      for (const jobs of groups) drafts.push(await draftInvoice(book, jobs, today));
      const quotes = drafts.map((draft) => writeDraft(draft, book.book.locale)).join('\n\n');
      world.say(world.json ? JSON.stringify(drafts, null, 2) : quotes);
      return 0;
    }
    const billed = await billGroups(book, groups, momentOf(book, world), today);
    for (const sentence of billed.lacking) world.tell(sentence);
    for (const jobs of billed.meanwhile)
      world.tell(`${jobs.map((job) => job.id).join(', ')}: billed meanwhile by another keyout.`);
    const invoices = billed.documents.map((document) => document.invoice);
    if (world.json) world.say(JSON.stringify(invoices, null, 2));
    else for (const document of billed.documents) world.say(writeIssued(document, book.book.locale));
    failStopped(billed.stopped, world);
    return stopped > 0 ? 1 : 0;
  },
};
