import { existsSync, readdirSync } from 'node:fs';
import path from 'node:path';
import { type IssuedInvoice, issuedInvoice } from '../records/issued-invoice.ts';
import { readRecord } from '../records/read-record.ts';
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
    .map((folder) => {
      const recordPath = path.join(folder, 'invoice.json');
      const file = path.join(open.folder, recordPath);
      const invoice = readRecord(issuedInvoice, readJson(file), file);
      return { number: invoice.number, invoice, recordPath, pdfPath: path.join(folder, 'invoice.pdf') };
    })
    .sort((one, other) => (one.number < other.number ? -1 : 1));
}

/** The invoice on which a job was billed, or null; an invoice credited whole frees its jobs. */
export function issuedForJob(open: OpenBook, job: string): IssuedDocument | null {
  const all = readIssued(open);
  const creditedWhole = new Set(
    all
      .flatMap(({ invoice }) =>
        invoice.type === 'credit note' && invoice.corrects !== undefined ? [invoice.corrects] : [],
      )
      .filter((corrects) => {
        const original = all.find((each) => each.number === corrects.number)?.invoice;
        return original?.lines.every((line) => corrects.lines.includes(line.number));
      })
      .map((corrects) => corrects.number),
  );
  return (
    all.find(
      ({ invoice }) =>
        invoice.type === 'invoice' &&
        !creditedWhole.has(invoice.number) &&
        invoice.vehicles.some((vehicle) => vehicle.job === job),
    ) ?? null
  );
}
