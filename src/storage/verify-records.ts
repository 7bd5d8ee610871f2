import { statSync } from 'node:fs';
import path from 'node:path';
import { Problem } from '../problem.ts';
import { type IssuedInvoice, issuedInvoice } from '../records/issued-invoice.ts';
import type { LedgerEntry } from '../records/ledger-entry.ts';
import { readRecord } from '../records/read-record.ts';
import type { Damage } from './damage.ts';
import { isCreditedWhole, issuedFolder, owedBy } from './issued.ts';
import type { OpenBook } from './open-book.ts';
import { readJson } from './read-json.ts';

type Entry<Event extends LedgerEntry['event']> = Extract<LedgerEntry, { event: Event }>;

/**
 * Where the ledger's lines disagree with the records they speak of, or with each other.
 * @param open the open book
 * @param entries the ledger, its chain whole
 */
export function recordDamage(open: OpenBook, entries: readonly LedgerEntry[]): readonly Damage[] {
  const issued = entries.filter((entry) => entry.event === 'issued');
  const credited = entries.filter((entry) => entry.event === 'credited');
  const paid = entries.filter((entry) => entry.event === 'paid');
  return [
    ...[...issued, ...credited].flatMap((entry) => documentDamage(open, entry)),
    ...creditDamage(issued, credited),
    ...paid.flatMap((entry) => paymentDamage(issued, entry)),
    ...jobDamage(issued, credited),
  ];
}

const lineOf = (entry: LedgerEntry) => `ledger.jsonl, line ${entry.sequence}`;

function documentDamage(open: OpenBook, entry: Entry<'issued'> | Entry<'credited'>): readonly Damage[] {
  const folder = issuedFolder({ number: entry.number, issued: entry.day });
  const place = path.join(folder, 'invoice.json');
  const file = path.join(open.folder, place);
  if (statSync(file, { throwIfNoEntry: false })?.isFile() !== true) return [];
  let record: IssuedInvoice;
  try {
    record = readRecord(issuedInvoice, readJson(file), place);
  } catch (error) {
    if (!(error instanceof Problem)) throw error;
    return [{ where: place, what: error.what, whatToDo: 'Put it back from a copy.' }];
  }
  const same =
    record.number === entry.number &&
    record.issued === entry.day &&
    record.totals.grossMinorUnits === entry.grossMinorUnits &&
    record.totals.dueMinorUnits + record.totals.paidMinorUnits === owedBy(entry) &&
    (record.type === 'invoice') === (entry.event === 'issued') &&
    (entry.event === 'issued' ? record.payerId === entry.payer : record.corrects?.number === entry.invoice);
  return same
    ? []
    : [
        {
          where: place,
          what: `The record and ${lineOf(entry)} disagree on number, day, amount or payer.`,
          whatToDo: 'Put both back from a copy.',
        },
      ];
}

function creditDamage(issued: readonly Entry<'issued'>[], credited: readonly Entry<'credited'>[]): readonly Damage[] {
  return credited.flatMap((entry) => {
    const invoice = issued.find((each) => each.number === entry.invoice);
    const sum = credited
      .filter((each) => each.invoice === entry.invoice && each.sequence <= entry.sequence)
      .reduce((all, each) => all + owedBy(each), 0);
    if (invoice !== undefined && sum <= owedBy(invoice)) return [];
    return [
      {
        where: lineOf(entry),
        what:
          invoice === undefined
            ? `${entry.number} corrects ${entry.invoice}, which was never issued.`
            : `${entry.number} takes back more than ${entry.invoice} charged.`,
        whatToDo: 'Ask whoever keeps the books; put the ledger back from a copy.',
      },
    ];
  });
}

function paymentDamage(issued: readonly Entry<'issued'>[], entry: Entry<'paid'>): readonly Damage[] {
  return entry.allocations
    .filter((part) => !issued.some((each) => each.number === part.invoice && each.payer === entry.payer))
    .map((part) => ({
      where: lineOf(entry),
      what: `The payment ${entry.payment} pays ${part.invoice}, which is no invoice to ${entry.payer}.`,
      whatToDo: 'Ask whoever keeps the books; put the ledger back from a copy.',
    }));
}

function jobDamage(issued: readonly Entry<'issued'>[], credited: readonly Entry<'credited'>[]): readonly Damage[] {
  const standing = issued.filter(
    (entry) =>
      !isCreditedWhole(
        owedBy(entry),
        credited.filter((each) => each.invoice === entry.number),
      ),
  );
  const byJob = new Map<string, string[]>();
  for (const entry of standing) for (const job of entry.jobs) byJob.set(job, [...(byJob.get(job) ?? []), entry.number]);
  return [...byJob]
    .filter(([, numbers]) => numbers.length > 1)
    .map(([job, numbers]) => ({
      where: 'ledger.jsonl',
      what: `The job ${job} is billed on ${numbers.join(' and ')}.`,
      whatToDo: 'Credit all but one of them: `keyout credit`.',
    }));
}
