import { existsSync, readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import type { LedgerEntry } from '../records/ledger-entry.ts';
import type { Damage } from './damage.ts';
import { sha256 } from './digest.ts';
import { inspectLedger } from './ledger.ts';
import type { OpenBook } from './open-book.ts';
import { numberDamage } from './verify-numbers.ts';
import { recordDamage } from './verify-records.ts';

/**
 * Everything in the book that was altered, is missing, is too many, or breaks the chain or a number series.
 * Where the chain is broken only the files are checked as well: what the ledger says of numbers and amounts is in doubt.
 * @param open the open book
 */
export function verifyBook(open: OpenBook): readonly Damage[] {
  const { entries, broken } = inspectLedger(open);
  const files = [...spokenOfDamage(open, entries), ...extraDamage(open, entries)];
  return broken.length > 0
    ? [...broken, ...files]
    : [...files, ...recordDamage(open, entries), ...numberDamage(open, entries)];
}

// of a file spoken of twice (a sheet printed again) the last entry counts
function spokenOf(entries: readonly LedgerEntry[]): ReadonlyMap<string, { sha256: string; entry: LedgerEntry }> {
  return new Map(
    entries.flatMap((entry) => entry.files.map((file) => [file.path, { sha256: file.sha256, entry }] as const)),
  );
}

function spokenOfDamage(open: OpenBook, entries: readonly LedgerEntry[]): readonly Damage[] {
  const damage: Damage[] = [];
  for (const [place, { sha256: digest, entry }] of spokenOf(entries)) {
    const file = path.join(open.folder, place);
    const sheet = entry.event === 'handed over' ? `\`keyout handover ${entry.job}\` makes it again.` : null;
    const found = digestOf(file);
    if (found === null)
      damage.push({ where: place, what: 'The file is missing.', whatToDo: sheet ?? 'Put it back from a copy.' });
    else if (found !== digest)
      damage.push({
        where: place,
        what: `The file was altered after it was ${wordFor(entry)}.`,
        whatToDo: sheet ?? 'Put the file back from a copy; a document is corrected by credit note only.',
      });
  }
  return damage;
}

// a folder, a broken link or an unreadable file in the place of a file is as bad as none
function digestOf(file: string): string | null {
  try {
    return sha256(readFileSync(file));
  } catch (error) {
    if (typeof (error as NodeJS.ErrnoException).code !== 'string') throw error;
    return null;
  }
}

function wordFor(entry: LedgerEntry): string {
  if (entry.event === 'credited') return 'issued';
  return entry.event === 'paid' ? 'recorded' : entry.event;
}

function filesBelow(folder: string, inside: string): readonly string[] {
  if (!existsSync(path.join(folder, inside))) return [];
  return readdirSync(path.join(folder, inside), { recursive: true, withFileTypes: true, encoding: 'utf8' })
    .filter((entry) => !entry.isDirectory())
    .map((entry) => path.relative(folder, path.join(entry.parentPath, entry.name)).split(path.sep).join('/'))
    .sort();
}

function extraDamage(open: OpenBook, entries: readonly LedgerEntry[]): readonly Damage[] {
  const known = spokenOf(entries);
  return filesBelow(open.folder, 'issued')
    .filter((file) => !known.has(file))
    .map((file) =>
      file.startsWith('issued/numbers/') || file.startsWith('issued/unfinished/')
        ? {
            where: file,
            what: 'A stop left this document unfinished: the ledger does not speak of it yet.',
            whatToDo: 'Run `keyout bill`: it finishes what was interrupted, and removes what was only begun.',
          }
        : {
            where: file,
            what: 'The ledger does not speak of this file.',
            whatToDo: 'Move it out of issued/.',
          },
    );
}
