import { writeMoney } from '../quantities/write-money.ts';
import type { IssuedInvoice } from '../records/issued-invoice.ts';
import { issuedForJob } from '../storage/issued.ts';
import { openBook } from '../storage/open-book.ts';
import { billJobs, draftInvoice, finishInterrupted, invoiceGroups } from './bill-jobs.ts';
import { chosenJobs } from './chosen-jobs.ts';
import type { Command } from './command.ts';
import { examineJob } from './examine-job.ts';
import { askForTrip } from './trip-of-job.ts';
import { writeFinding } from './write-finding.ts';

function writeDraft(invoice: IssuedInvoice, locale: string): string {
  const money = (minorUnits: number) => writeMoney(minorUnits, invoice.currency, locale);
  const rows = invoice.lines.map(
    (line) => `  ${line.what.padEnd(52).slice(0, 52)} ${money(line.netMinorUnits).padStart(12)}\n      ${line.because}`,
  );
  return [
    `Quote for ${invoice.payer.name}: ${invoice.vehicles.map((vehicle) => vehicle.text).join('; ')}`,
    ...rows,
    `  ${'net'.padEnd(52)} ${money(invoice.totals.netMinorUnits).padStart(12)}`,
    `  ${'tax'.padEnd(52)} ${money(invoice.totals.taxMinorUnits).padStart(12)}`,
    `  ${'total'.padEnd(52)} ${money(invoice.totals.grossMinorUnits).padStart(12)}`,
  ].join('\n');
}

/** `keyout bill [JOB…]`: issue invoices, one a vehicle or one a payer; `--draft` shows the same without issuing. */
export const bill: Command = {
  name: 'bill',
  words: '[JOB…]',
  summary: 'issue invoices, one a vehicle or one a payer',
  options: {
    day: { type: 'string', takes: 'DATE', help: 'the jobs of this day (default: today)' },
    per: { type: 'string', takes: 'WHAT', help: '"vehicle" or "payer" (default: as the payer wants)' },
    draft: { type: 'boolean', help: 'show what would be issued, issue nothing' },
  },
  run: async (call, world) => {
    const book = await openBook(world.bookFolder);
    const today = world.today(book.book.timeZone);
    const day = typeof call.options.day === 'string' ? call.options.day : today;
    const per = call.options.per === 'payer' || call.options.per === 'vehicle' ? call.options.per : null;
    if (call.options.draft !== true) await finishInterrupted(book, world);
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
          [`${job.id} cannot be billed yet:`, ...examined.open.map((finding) => writeFinding(finding))].join('\n'),
        );
        continue;
      }
      ready.push(job);
    }
    const made = [];
    for (const jobs of invoiceGroups(book, ready, per)) {
      if (call.options.draft === true) {
        const draft = await draftInvoice(book, jobs, today);
        made.push(draft);
        if (!world.json) world.say(writeDraft(draft, book.book.locale));
        continue;
      }
      const issued = await billJobs(book, jobs, today, world);
      if (issued === null) {
        world.tell(`${jobs.map((job) => job.id).join(', ')}: billed meanwhile by another keyout.`);
        continue;
      }
      made.push(issued.invoice);
      if (!world.json)
        world.say(
          `${issued.invoice.number}  ${writeMoney(issued.invoice.totals.grossMinorUnits, issued.invoice.currency, book.book.locale)}  ${issued.pdfPath}`,
        );
    }
    if (world.json) world.say(JSON.stringify(made, null, 2));
    return stopped > 0 ? 1 : 0;
  },
};
