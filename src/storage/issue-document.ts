import { existsSync, linkSync, mkdirSync, readdirSync, readFileSync, renameSync, rmSync } from 'node:fs';
import path from 'node:path';
import { Problem } from '../problem.ts';
import type { NumberSeries } from '../records/book.ts';
import { type IssuedInvoice, issuedInvoice } from '../records/issued-invoice.ts';
import { readRecord } from '../records/read-record.ts';
import type { ChangingBook, DrawFiles } from './changing-book.ts';
import { sha256 } from './digest.ts';
import { fileProblem } from './file-problem.ts';
import { type IssuedDocument, issuedFolder } from './issued.ts';
import { appendLedger, readLedger } from './ledger.ts';
import { placeOfNumber, seriesFor, seriesNumber, seriesStem } from './number-series.ts';
import type { OpenBook } from './open-book.ts';
import { flushFolder, writeFlushed } from './write-atomically.ts';

const numbersFolder = path.join('issued', 'numbers');
const unfinishedFolder = (number: string) => path.join('issued', 'unfinished', number);
const recordText = (numbered: IssuedInvoice) => `${JSON.stringify(numbered, null, 2)}\n`;

/**
 * Issues a document: number, record, drawn files and ledger entry, all or nothing.
 * Everything is written and flushed aside under the next number; the link of the record to the number's name is the moment of
 * issue, so a failure before it leaves no number, and a stop after it is finished by `completeIssued`.
 * @param changing the book, held against other writers
 * @param issue the document not yet numbered, and the van whose series it takes or null
 */
export async function issueDocument(
  changing: ChangingBook,
  issue: { readonly draft: IssuedInvoice; readonly van: string | null },
): Promise<IssuedDocument> {
  const { draft } = issue;
  const series = seriesFor(changing.open.book, draft.type, issue.van);
  const year = draft.issued.slice(0, 4);
  const numbers = path.join(changing.open.folder, numbersFolder);
  try {
    mkdirSync(numbers, { recursive: true });
    for (let index = nextPlace(changing.open, series, year); ; index += 1) {
      const number = seriesNumber(series, year, index);
      const numbered: IssuedInvoice = { ...draft, number, payment: { ...draft.payment, reference: number } };
      refuseUnsound(changing.open, numbered);
      const aside = path.join(changing.open.folder, unfinishedFolder(number));
      await writeAside(changing.open, numbered, changing.draw);
      writeFlushed(path.join(aside, 'number.json'), recordText(numbered));
      flushFolder(aside);
      try {
        linkSync(path.join(aside, 'number.json'), path.join(numbers, `${number}.json`));
      } catch (error) {
        rmSync(aside, { recursive: true, force: true });
        if ((error as NodeJS.ErrnoException).code === 'EEXIST') continue;
        throw error;
      }
      flushFolder(numbers);
      return await completeIssued(changing.open, numbered, changing.now, changing.draw);
    }
  } catch (error) {
    throw fileProblem(error, numbers);
  }
}

async function writeAside(open: OpenBook, numbered: IssuedInvoice, draw: DrawFiles): Promise<void> {
  const files = await draw(numbered);
  const aside = path.join(open.folder, unfinishedFolder(numbered.number));
  rmSync(aside, { recursive: true, force: true });
  mkdirSync(aside, { recursive: true });
  writeFlushed(path.join(aside, 'invoice.json'), recordText(numbered));
  for (const file of files) writeFlushed(path.join(aside, file.name), file.content);
  flushFolder(aside);
}

function refuseUnsound(open: OpenBook, numbered: IssuedInvoice): void {
  const folder = path.join(open.folder, issuedFolder(numbered));
  readRecord(issuedInvoice, numbered, numbered.number);
  const { grossMinorUnits, dueMinorUnits, paidMinorUnits } = numbered.totals;
  if (grossMinorUnits < 0 || dueMinorUnits + paidMinorUnits < 0)
    throw new Problem(
      `The ${numbered.type} would come to less than nothing.`,
      numbered.vehicles.map((vehicle) => vehicle.job).join(', '),
      'Take back by credit note what was charged, instead of charging a negative amount.',
    );
  if (existsSync(folder))
    throw new Problem(
      `The number ${numbered.number} is next, but a folder of that name stands there already.`,
      folder,
      'Run `keyout verify`; move the folder out of issued/ if it was not made by keyout.',
      1,
    );
}

function nextPlace(open: OpenBook, series: NumberSeries, year: string): number {
  const stem = seriesStem(series, year);
  const entered = readLedger(open).flatMap((entry) =>
    entry.event === 'issued' || entry.event === 'credited'
      ? [entry.series ?? placeOfNumber(open.book, entry.number, entry.day.slice(0, 4))]
      : [],
  );
  const linked = readdirSync(path.join(open.folder, numbersFolder))
    .filter((name) => name.startsWith(stem) && name.endsWith('.json'))
    .map((name) => placeOfNumber(open.book, name.slice(0, -5), year));
  const places = [...entered, ...linked].filter((each) => each.stem === stem).map((each) => each.place);
  return places.reduce((highest, index) => Math.max(highest, index), series.start - 1) + 1;
}

/**
 * Does what follows from a number once given, as far as it is still missing: the files in their folder, the ledger entry.
 * @param open the open book, held against other writers
 * @param numbered the numbered document
 * @param now the moment, UTC
 * @param draw draws the files again where a stop lost them
 */
export async function completeIssued(
  open: OpenBook,
  numbered: IssuedInvoice,
  now: string,
  draw: DrawFiles,
): Promise<IssuedDocument> {
  const folder = issuedFolder(numbered);
  if (!existsSync(path.join(open.folder, folder))) {
    const aside = path.join(open.folder, unfinishedFolder(numbered.number));
    if (!existsSync(path.join(aside, 'invoice.json'))) await writeAside(open, numbered, draw);
    rmSync(path.join(aside, 'number.json'), { force: true });
    mkdirSync(path.dirname(path.join(open.folder, folder)), { recursive: true });
    renameSync(aside, path.join(open.folder, folder));
    flushFolder(path.dirname(path.join(open.folder, folder)));
    rmSync(path.dirname(aside), { recursive: true, force: true });
  }
  const entered = readLedger(open).some(
    (entry) => (entry.event === 'issued' || entry.event === 'credited') && entry.number === numbered.number,
  );
  if (!entered) enter(open, numbered, now);
  return {
    number: numbered.number,
    invoice: numbered,
    recordPath: path.join(folder, 'invoice.json'),
    pdfPath: path.join(folder, 'invoice.pdf'),
  };
}

function enter(open: OpenBook, numbered: IssuedInvoice, now: string): void {
  const folder = issuedFolder(numbered);
  const names = readdirSync(path.join(open.folder, folder)).sort();
  const paths = [...names.map((name) => path.join(folder, name)), path.join(numbersFolder, `${numbered.number}.json`)];
  const shared = {
    written: now,
    day: numbered.issued,
    number: numbered.number,
    series: placeOfNumber(open.book, numbered.number, numbered.issued.slice(0, 4)),
    grossMinorUnits: numbered.totals.grossMinorUnits,
    owedMinorUnits: numbered.totals.dueMinorUnits + numbered.totals.paidMinorUnits,
    files: paths.map((file) => ({
      path: file.split(path.sep).join('/'),
      sha256: sha256(readFileSync(path.join(open.folder, file))),
    })),
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
