import { existsSync, linkSync, mkdirSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import path from 'node:path';
import type { IssuedInvoice } from '../records/issued-invoice.ts';
import { sha256 } from './digest.ts';
import { fileProblem } from './file-problem.ts';
import { type IssuedDocument, issuedFolder } from './issued.ts';
import { appendLedger, readLedger } from './ledger.ts';
import type { OpenBook } from './open-book.ts';
import { flushFolder, writeAtomically, writeFlushed } from './write-atomically.ts';

/** The number at a place of a series ("INV-0042", "INV-2026-0042"). */
export function seriesNumber(
  series: { readonly prefix: string; readonly digits: number; readonly yearly: boolean },
  year: string,
  place: number,
): string {
  return `${series.prefix}${series.yearly ? `${year}-` : ''}${String(place).padStart(series.digits, '0')}`;
}

/**
 * Issues a document: the next number of its series, its record, PDF and ledger entry.
 * The record is written whole and then linked to the number's name, so that two processes never share a number and none is skipped;
 * what a stop in between left out (PDF, ledger entry) is made good by `completeIssued` before the next document.
 * @param open the open book
 * @param issue the document not yet numbered, the moment, and what draws its PDF
 */
export async function issueDocument(
  open: OpenBook,
  issue: {
    readonly draft: IssuedInvoice;
    readonly now: string;
    readonly render: (numbered: IssuedInvoice) => Promise<Uint8Array>;
  },
): Promise<IssuedDocument> {
  const { draft } = issue;
  const numbers = path.join(open.folder, 'issued', 'numbers');
  const series = draft.type === 'invoice' ? open.book.numbering.invoice : open.book.numbering.creditNote;
  const temporary = path.join(numbers, `${process.pid}.temporary`);
  try {
    mkdirSync(numbers, { recursive: true });
    for (let place = nextPlace(numbers, series, draft.issued.slice(0, 4)); ; place += 1) {
      const number = seriesNumber(series, draft.issued.slice(0, 4), place);
      const numbered: IssuedInvoice = { ...draft, number, payment: { ...draft.payment, reference: number } };
      writeFlushed(temporary, `${JSON.stringify(numbered, null, 2)}\n`);
      try {
        linkSync(temporary, path.join(numbers, `${number}.json`));
      } catch (error) {
        if ((error as NodeJS.ErrnoException).code === 'EEXIST') continue;
        throw error;
      }
      flushFolder(numbers);
      rmSync(temporary, { force: true });
      return await completeIssued(open, numbered, issue.now, issue.render);
    }
  } catch (error) {
    rmSync(temporary, { force: true });
    throw fileProblem(error, numbers);
  }
}

function nextPlace(numbers: string, series: OpenBook['book']['numbering']['invoice'], year: string): number {
  const start = `${series.prefix}${series.yearly ? `${year}-` : ''}`;
  const places = readdirSync(numbers)
    .filter((name) => name.startsWith(start) && name.endsWith('.json'))
    .map((name) => Number(name.slice(start.length, -5)))
    .filter((place) => Number.isInteger(place));
  return Math.max(0, ...places) + 1;
}

/**
 * Writes what follows from a number once given: PDF, record in its folder, ledger entry; does only what is still missing.
 * @param open the open book
 * @param numbered the numbered document
 * @param now the moment, UTC
 * @param render draws the PDF
 */
export async function completeIssued(
  open: OpenBook,
  numbered: IssuedInvoice,
  now: string,
  render: (numbered: IssuedInvoice) => Promise<Uint8Array>,
): Promise<IssuedDocument> {
  const folder = issuedFolder(numbered);
  const recordPath = path.join(folder, 'invoice.json');
  const pdfPath = path.join(folder, 'invoice.pdf');
  if (!existsSync(path.join(open.folder, pdfPath)))
    writeAtomically(path.join(open.folder, pdfPath), await render(numbered));
  if (!existsSync(path.join(open.folder, recordPath)))
    writeAtomically(path.join(open.folder, recordPath), `${JSON.stringify(numbered, null, 2)}\n`);
  const entered = readLedger(open).some(
    (entry) => (entry.event === 'issued' || entry.event === 'credited') && entry.number === numbered.number,
  );
  if (!entered) {
    const files = [recordPath, pdfPath].map((file) => ({
      path: file,
      sha256: sha256(readFileSync(path.join(open.folder, file))),
    }));
    const shared = {
      written: now,
      day: numbered.issued,
      number: numbered.number,
      grossMinorUnits: numbered.totals.grossMinorUnits,
      files,
    };
    if (numbered.type === 'invoice')
      appendLedger(open, {
        event: 'issued',
        ...shared,
        jobs: numbered.vehicles.map((vehicle) => vehicle.job),
        payer: numbered.payerId,
      });
    else appendLedger(open, { event: 'credited', ...shared, invoice: numbered.corrects?.number ?? '' });
  }
  return { number: numbered.number, invoice: numbered, recordPath, pdfPath };
}
