import { existsSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { exportFiles, isExportedFile } from '../exports/export-files.ts';
import type { ExportInput } from '../exports/export-input.ts';
import { Problem } from '../problem.ts';
import { readIssued } from '../storage/issued.ts';
import { readLedger } from '../storage/ledger.ts';
import type { OpenBook } from '../storage/open-book.ts';
import { listTrips } from '../storage/trips.ts';
import { verifyBook } from '../storage/verify-book.ts';
import { writeFolder } from '../storage/write-folder.ts';

type Period = { readonly from: string; readonly to: string };

// what stands there is the book itself; only out/ holds what can be made again
function refuseInsideRecords(book: OpenBook, folder: string): void {
  const [first] = path.relative(path.resolve(book.folder), path.resolve(folder)).split(path.sep);
  if (first !== undefined && ['issued', 'jobs', 'payers', 'photos', 'templates', 'trips'].includes(first))
    throw new Problem(
      'The folder lies among the records of the book.',
      'keyout export --out',
      'Name a folder outside the book, or leave --out away: the files then go into its out/ folder.',
      2,
    );
}

// figures from an altered book would look as sound as any; a sheet that was printed again moves no money
function refuseDamaged(book: OpenBook): void {
  const damage = verifyBook(book).filter((each) => !each.where.startsWith('out/'));
  const first = damage[0];
  if (first !== undefined)
    throw new Problem(
      `The book is not as it was written, so nothing is exported: ${first.what}${damage.length > 1 ? ` (and ${damage.length - 1} more)` : ''}`,
      first.where,
      `${first.whatToDo} \`keyout verify\` lists everything.`,
      1,
    );
}

function inputOf(book: OpenBook, period: Period): ExportInput {
  const issued = readIssued(book);
  const structured = issued.flatMap((document): readonly (readonly [string, string])[] => {
    const file = path.join(book.folder, path.dirname(document.recordPath), 'invoice.xml');
    return existsSync(file) ? [[document.number, readFileSync(file, 'utf8')]] : [];
  });
  return {
    ...period,
    documents: issued.map((document) => document.invoice),
    entries: readLedger(book),
    trips: listTrips(book, period),
    structured: new Map(structured),
    accounts: book.book.accounts,
    currency: book.book.currency,
  };
}

/** The folder made, and the names of its files. */
export type ExportedPeriod = Period & { readonly folder: string; readonly files: readonly string[] };

/**
 * Writes the bookkeeper's files for a period into one folder, the same bytes each time.
 * @param book the open book
 * @param period first and last day
 * @param how the folder (null: in the book's out folder), and how decimals and the beginning of a file are marked
 * @throws Problem when the book is damaged or the folder lies among its records
 */
export function exportPeriod(
  book: OpenBook,
  period: Period,
  how: { readonly folder: string | null; readonly decimalComma: boolean; readonly byteOrderMark: boolean },
): ExportedPeriod {
  refuseDamaged(book);
  const { decimalComma, byteOrderMark } = how;
  const files = exportFiles(inputOf(book, period), { decimalComma, byteOrderMark });
  const folder = how.folder ?? path.join(book.folder, 'out', `export-${period.from}-${period.to}`);
  refuseInsideRecords(book, folder);
  writeFolder(folder, files, isExportedFile);
  return { ...period, folder, files: [...files.keys()] };
}
