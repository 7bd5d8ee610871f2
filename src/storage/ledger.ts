import { closeSync, existsSync, fsyncSync, openSync, readFileSync, truncateSync, writeSync } from 'node:fs';
import path from 'node:path';
import { Problem } from '../problem.ts';
import { type LedgerEntry, ledgerEntry } from '../records/ledger-entry.ts';
import { readRecord } from '../records/read-record.ts';
import { sha256 } from './digest.ts';
import { fileProblem } from './file-problem.ts';
import type { OpenBook } from './open-book.ts';
import { withLock } from './with-lock.ts';

type Unchained<Entry> = Entry extends LedgerEntry ? Omit<Entry, 'sequence' | 'previous'> : never;
/** An entry before it is chained to the ledger. */
export type NewLedgerEntry = Unchained<LedgerEntry>;

const firstPrevious = '0'.repeat(64);
const ledgerFile = (open: OpenBook) => path.join(open.folder, 'ledger.jsonl');

function ledgerLines(open: OpenBook): readonly string[] {
  const file = ledgerFile(open);
  if (!existsSync(file)) return [];
  try {
    return readFileSync(file, 'utf8')
      .split('\n')
      .filter((line) => line !== '');
  } catch (error) {
    throw fileProblem(error, file);
  }
}

/**
 * Every entry of the ledger.
 * @param open the open book
 * @throws Problem naming the line that cannot be read or whose chain is broken
 */
export function readLedger(open: OpenBook): readonly LedgerEntry[] {
  let previous = firstPrevious;
  return ledgerLines(open).map((line, index) => {
    const where = `${ledgerFile(open)}, line ${index + 1}`;
    let value: unknown;
    try {
      value = JSON.parse(line);
    } catch {
      throw new Problem(
        'The line is not valid JSON.',
        where,
        'Put the ledger back from a copy: it was altered or cut.',
        1,
      );
    }
    const entry = readRecord(ledgerEntry, value, where);
    if (entry.previous !== previous || entry.sequence !== index + 1) {
      throw new Problem(
        'The chain is broken here: a line before it was altered, added or removed.',
        where,
        'Put the ledger back from a copy.',
        1,
      );
    }
    previous = sha256(line);
    return entry;
  });
}

/**
 * Adds one entry at the end of the ledger, flushed to the disk.
 * @param open the open book
 * @param entry the entry, not yet chained
 */
export function appendLedger(open: OpenBook, entry: NewLedgerEntry): LedgerEntry {
  try {
    return withLock(`${ledgerFile(open)}.lock`, () => appendLocked(open, entry));
  } catch (error) {
    throw fileProblem(error, ledgerFile(open));
  }
}

function appendLocked(open: OpenBook, entry: NewLedgerEntry): LedgerEntry {
  dropTornLine(ledgerFile(open));
  const lines = ledgerLines(open);
  const last = lines.at(-1);
  const chained = {
    ...entry,
    sequence: lines.length + 1,
    previous: last === undefined ? firstPrevious : sha256(last),
  } as LedgerEntry;
  const handle = openSync(ledgerFile(open), 'a');
  try {
    writeSync(handle, `${JSON.stringify(chained)}\n`);
    fsyncSync(handle);
  } finally {
    closeSync(handle);
  }
  return chained;
}

// a line without its end was cut by a stop while it was written: what it spoke of is entered again
function dropTornLine(file: string): void {
  if (!existsSync(file)) return;
  const text = readFileSync(file, 'utf8');
  if (text !== '' && !text.endsWith('\n'))
    truncateSync(file, Buffer.byteLength(text.slice(0, text.lastIndexOf('\n') + 1)));
}
