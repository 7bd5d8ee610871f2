import { closeSync, existsSync, fsyncSync, openSync, readFileSync, truncateSync, writeSync } from 'node:fs';
import path from 'node:path';
import { Problem } from '../problem.ts';
import { type LedgerEntry, type LedgerHead, ledgerEntry } from '../records/ledger-entry.ts';
import { readRecord } from '../records/read-record.ts';
import type { Damage } from './damage.ts';
import { sha256 } from './digest.ts';
import { fileProblem } from './file-problem.ts';
import { firstPrevious, headDamage, readHead, writeHead } from './ledger-head.ts';
import type { OpenBook } from './open-book.ts';
import { withLock } from './with-lock.ts';

type Unchained<Entry> = Entry extends LedgerEntry ? Omit<Entry, 'sequence' | 'previous'> : never;
/** An entry before it is chained to the ledger. */
export type NewLedgerEntry = Unchained<LedgerEntry>;

const ledgerFile = (open: OpenBook) => path.join(open.folder, 'ledger.jsonl');
const readingTurnsMax = 50;

type Chain = { readonly text: string; readonly entries: readonly LedgerEntry[]; readonly previous: string };
/** What was read and found whole before, by file: a ledger only grows, so the same beginning is not judged again. */
const judgedBefore = new Map<string, Chain>();
const nothing: Chain = { text: '', entries: [], previous: firstPrevious };

// what follows the last line end was cut by a stop while it was written: it was never entered
function wholeText(open: OpenBook): string {
  const file = ledgerFile(open);
  if (!existsSync(file)) return '';
  try {
    const text = readFileSync(file, 'utf8');
    return text.slice(0, text.lastIndexOf('\n') + 1);
  } catch (error) {
    throw fileProblem(error, file);
  }
}

const linesOf = (text: string): readonly string[] => text.split('\n').slice(0, -1);

type ReadLedger = {
  readonly text: string;
  readonly head: LedgerHead | null;
  readonly unreadable: readonly Damage[];
};

function headIfReadable(open: OpenBook): Omit<ReadLedger, 'text'> {
  try {
    return { head: readHead(open), unreadable: [] };
  } catch (error) {
    if (!(error instanceof Problem)) throw error;
    return { head: null, unreadable: [{ where: error.where, what: error.what, whatToDo: error.whatToDo }] };
  }
}

// a head that stood still while the lines were read belongs to them
function textWithHead(open: OpenBook): ReadLedger {
  let before = headIfReadable(open);
  for (let turn = 0; ; turn += 1) {
    const text = wholeText(open);
    const after = headIfReadable(open);
    if (after.head?.last === before.head?.last || turn === readingTurnsMax) return { text, ...after };
    before = after;
  }
}

/**
 * Every entry that can be read, and each place where the ledger is not as it was written.
 * @param open the open book
 */
export function inspectLedger(open: OpenBook): {
  readonly entries: readonly LedgerEntry[];
  readonly broken: readonly Damage[];
} {
  const { text, head, unreadable } = textWithHead(open);
  const known = judgedBefore.get(ledgerFile(open));
  const start = known !== undefined && text.startsWith(known.text) ? known : nothing;
  const entries = [...start.entries];
  const broken: Damage[] = [...unreadable];
  let previous = start.previous;
  let index = start.entries.length;
  for (const line of linesOf(text.slice(start.text.length))) {
    index += 1;
    const where = `${ledgerFile(open)}, line ${index}`;
    try {
      const entry = readRecord(ledgerEntry, parsed(line, where), where);
      if (entry.previous !== previous || entry.sequence !== index)
        broken.push({
          where,
          what: 'The chain is broken here: this line or the one before it was altered, added or removed.',
          whatToDo: 'Put the ledger back from a copy.',
        });
      entries.push(entry);
    } catch (error) {
      if (!(error instanceof Problem)) throw error;
      broken.push({ where: error.where, what: error.what, whatToDo: error.whatToDo });
    }
    previous = sha256(line);
  }
  if (broken.length > 0) return { entries, broken };
  judgedBefore.set(ledgerFile(open), { text, entries, previous });
  const atHead = headDamage(open, linesOf(text), head);
  return { entries, broken: atHead === null ? [] : [atHead] };
}

function parsed(line: string, where: string): unknown {
  try {
    return JSON.parse(line);
  } catch {
    throw new Problem('The line is not valid JSON.', where, 'Put the ledger back from a copy: it was altered or cut.');
  }
}

/**
 * Every entry of the ledger.
 * @param open the open book
 * @throws Problem naming the line that cannot be read or whose chain is broken
 */
export function readLedger(open: OpenBook): readonly LedgerEntry[] {
  const { entries, broken } = inspectLedger(open);
  const first = broken[0];
  if (first !== undefined) throw new Problem(first.what, first.where, first.whatToDo, 1);
  return entries;
}

/**
 * Adds one entry at the end of the ledger, flushed to the disk.
 * @param open the open book
 * @param entry the entry, not yet chained
 * @throws Problem when the ledger does not end as its head says: damage is never written over
 */
export function appendLedger(open: OpenBook, entry: NewLedgerEntry): LedgerEntry {
  try {
    return withLock(`${ledgerFile(open)}.lock`, () => appendLocked(open, entry));
  } catch (error) {
    throw fileProblem(error, ledgerFile(open));
  }
}

function appendLocked(open: OpenBook, entry: NewLedgerEntry): LedgerEntry {
  const lines = linesOf(wholeText(open));
  const head = readHead(open);
  const damage = headDamage(open, lines, head);
  if (damage !== null) throw new Problem(damage.what, damage.where, damage.whatToDo, 1);
  dropTornLine(ledgerFile(open));
  const last = lines.at(-1);
  // else a second stop in a row would leave the head two lines behind
  if (last !== undefined && head?.lines !== lines.length) writeHead(open, { lines: lines.length, last: sha256(last) });
  const chained = {
    ...entry,
    sequence: lines.length + 1,
    previous: last === undefined ? firstPrevious : sha256(last),
  } as LedgerEntry;
  // a line that could not be read again would close the whole book
  readRecord(ledgerEntry, chained, ledgerFile(open));
  const line = JSON.stringify(chained);
  const handle = openSync(ledgerFile(open), 'a');
  try {
    writeSync(handle, `${line}\n`);
    fsyncSync(handle);
  } finally {
    closeSync(handle);
  }
  writeHead(open, { lines: lines.length + 1, last: sha256(line) });
  return chained;
}

function dropTornLine(file: string): void {
  if (!existsSync(file)) return;
  const text = readFileSync(file, 'utf8');
  if (text !== '' && !text.endsWith('\n'))
    truncateSync(file, Buffer.byteLength(text.slice(0, text.lastIndexOf('\n') + 1)));
}
