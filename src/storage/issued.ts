import { existsSync, readdirSync } from 'node:fs';
import path from 'node:path';
import { type IssuedInvoice, issuedInvoice } from '../records/issued-invoice.ts';
import type { LedgerEntry } from '../records/ledger-entry.ts';
import { readRecord } from '../records/read-record.ts';
import { readLedger } from './ledger.ts';
import type { OpenBook } from './open-book.ts';
import { readJson } from './read-json.ts';

/** A document that was issued, with its paths inside the book. */
export type IssuedDocument = {
  readonly number: string;
  readonly invoice: IssuedInvoice;
  readonly recordPath: string;
  readonly pdfPath: string;
};

/** The folder of an issued document, inside the book. */
export function issuedFolder(invoice: Pick<IssuedInvoice, 'number' | 'issued'>): string {
  return path.join('issued', invoice.issued.slice(0, 4), invoice.number);
}

function readDocument(open: OpenBook, folder: string): IssuedDocument {
  const recordPath = path.join(folder, 'invoice.json');
  const file = path.join(open.folder, recordPath);
  const invoice = readRecord(issuedInvoice, readJson(file), file);
  return { number: invoice.number, invoice, recordPath, pdfPath: path.join(folder, 'invoice.pdf') };
}

/**
 * Every issued document, in the order of their numbers.
 * @param open the open book
 */
export function readIssued(open: OpenBook): readonly IssuedDocument[] {
  const root = path.join(open.folder, 'issued');
  if (!existsSync(root)) return [];
  return readdirSync(root)
    .filter((year) => /^\d{4}$/.test(year))
    .flatMap((year) => readdirSync(path.join(root, year)).map((number) => path.join('issued', year, number)))
    .filter((folder) => existsSync(path.join(open.folder, folder, 'invoice.json')))
    .map((folder) => readDocument(open, folder))
    .sort((one, other) => (one.number < other.number ? -1 : 1));
}

/**
 * One issued document by its number, or null.
 * @param open the open book
 * @param number the number, in any case of letters
 */
export function findIssued(open: OpenBook, number: string): IssuedDocument | null {
  const entry = readLedger(open).find(
    (each) =>
      (each.event === 'issued' || each.event === 'credited') && each.number.toUpperCase() === number.toUpperCase(),
  );
  return entry !== undefined && (entry.event === 'issued' || entry.event === 'credited')
    ? readDocument(open, issuedFolder({ number: entry.number, issued: entry.day }))
    : null;
}

/** The ledger's line of the invoice on which a job is billed; an invoice credited whole frees its jobs. */
export function billingEntry(
  entries: readonly LedgerEntry[],
  job: string,
): Extract<LedgerEntry, { event: 'issued' }> | null {
  const credited = (number: string) => entries.filter((each) => each.event === 'credited' && each.invoice === number);
  const entry = entries.find(
    (each) =>
      each.event === 'issued' && each.jobs.includes(job) && !isCreditedWhole(owedBy(each), credited(each.number)),
  );
  return entry?.event === 'issued' ? entry : null;
}

/** The invoice on which a job was billed, or null; an invoice credited whole frees its jobs. */
export function issuedForJob(open: OpenBook, job: string): IssuedDocument | null {
  const entry = billingEntry(readLedger(open), job);
  return entry === null ? null : readDocument(open, issuedFolder({ number: entry.number, issued: entry.day }));
}

/** The credit notes that correct an invoice, in the order in which they were issued. */
export function creditNotesOf(open: OpenBook, number: string): readonly IssuedInvoice[] {
  return readLedger(open).flatMap((entry) =>
    entry.event === 'credited' && entry.invoice === number
      ? [readDocument(open, issuedFolder({ number: entry.number, issued: entry.day })).invoice]
      : [],
  );
}

/** What a document adds to a balance, or takes off it. */
export function owedBy(entry: LedgerEntry): number {
  return entry.event === 'issued' || entry.event === 'credited' ? (entry.owedMinorUnits ?? entry.grossMinorUnits) : 0;
}

/**
 * Whether credit notes take back all of an invoice; one of nothing is taken back by any credit note.
 * @param owedMinorUnits what the invoice charged
 * @param credits ledger entries of the credit notes that correct it
 */
export function isCreditedWhole(owedMinorUnits: number, credits: readonly LedgerEntry[]): boolean {
  return credits.length > 0 && credits.reduce((all, each) => all + owedBy(each), 0) >= owedMinorUnits;
}
