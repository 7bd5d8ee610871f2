import { existsSync } from 'node:fs';
import path from 'node:path';
import { Problem } from '../problem.ts';
import { type LedgerHead, ledgerHead } from '../records/ledger-entry.ts';
import { readRecord } from '../records/read-record.ts';
import type { Damage } from './damage.ts';
import { sha256 } from './digest.ts';
import type { OpenBook } from './open-book.ts';
import { readJson } from './read-json.ts';
import { writeAtomically } from './write-atomically.ts';

/** What the first line of a ledger carries for the digest of the line before it. */
export const firstPrevious = '0'.repeat(64);

const headFile = (open: OpenBook) => path.join(open.folder, 'ledger-head.json');

/**
 * The ledger's head, or null when none was written yet.
 * @throws Problem when it cannot be read
 */
export function readHead(open: OpenBook): LedgerHead | null {
  const file = headFile(open);
  if (!existsSync(file)) return null;
  try {
    return readRecord(ledgerHead, readJson(file), file);
  } catch (error) {
    if (!(error instanceof Problem)) throw error;
    throw new Problem(error.what, error.where, 'Put ledger.jsonl and ledger-head.json back from a copy.', 1);
  }
}

/** Writes the ledger's head, whole or not at all. */
export function writeHead(open: OpenBook, head: LedgerHead): void {
  writeAtomically(headFile(open), `${JSON.stringify(head)}\n`);
}

/**
 * How the end of the ledger differs from its head, or null; one line more is a stop between line and head.
 * @param open the open book
 * @param lines the ledger's whole lines
 * @param head its head
 */
export function headDamage(open: OpenBook, lines: readonly string[], head: LedgerHead | null): Damage | null {
  const ledger = path.join(open.folder, 'ledger.jsonl');
  const damage = (where: string, what: string): Damage => ({
    where,
    what,
    whatToDo: 'Put ledger.jsonl and ledger-head.json back from a copy.',
  });
  if (head === null) return lines.length <= 1 ? null : damage(headFile(open), 'The head of the ledger is missing.');
  if (lines.length < head.lines)
    return damage(ledger, `The ledger has ${lines.length} lines, its head says ${head.lines}: lines were cut off.`);
  if (sha256(lines[head.lines - 1] ?? '') !== head.last)
    return damage(`${ledger}, line ${head.lines}`, 'The line was altered: its digest is not the one in the head.');
  if (lines.length > head.lines + 1)
    return damage(
      `${ledger}, line ${head.lines + 1}`,
      `The ledger has ${lines.length} lines, its head says ${head.lines}: lines were added.`,
    );
  return null;
}
