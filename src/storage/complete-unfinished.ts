import { existsSync, readdirSync } from 'node:fs';
import path from 'node:path';
import { Problem } from '../problem.ts';
import { issuedInvoice } from '../records/issued-invoice.ts';
import { readRecord } from '../records/read-record.ts';
import type { DrawFiles } from './changing-book.ts';
import { completeIssued } from './issue-document.ts';
import { readLedger } from './ledger.ts';
import type { OpenBook } from './open-book.ts';
import { readJson } from './read-json.ts';

/**
 * Numbers that were given but are not in the ledger yet: after a stop there is one at most.
 * @param open the open book
 */
export function unfinishedNumbers(open: OpenBook): readonly string[] {
  const numbers = path.join(open.folder, 'issued', 'numbers');
  if (!existsSync(numbers)) return [];
  const entered = new Set(
    readLedger(open).flatMap((entry) => (entry.event === 'issued' || entry.event === 'credited' ? [entry.number] : [])),
  );
  return readdirSync(numbers)
    .filter((name) => name.endsWith('.json'))
    .map((name) => name.slice(0, -5))
    .filter((number) => !entered.has(number))
    .sort();
}

/**
 * Makes good what a stop between number and ledger entry left out; done before anything is issued.
 * @param open the open book, held against other writers
 * @param now the moment, UTC
 * @param draw draws a document's files
 * @throws Problem when more is missing than a stop can leave out: then the ledger itself was lost
 */
export async function completeUnfinished(open: OpenBook, now: string, draw: DrawFiles): Promise<void> {
  const numbers = unfinishedNumbers(open);
  if (numbers.length > 1)
    throw new Problem(
      `The ledger does not know ${numbers.length} numbers that were given: ${numbers.slice(0, 5).join(', ')}.`,
      path.join(open.folder, 'ledger.jsonl'),
      'Put ledger.jsonl and ledger-head.json back from a copy.',
      1,
    );
  for (const number of numbers) {
    const file = path.join(open.folder, 'issued', 'numbers', `${number}.json`);
    await completeIssued(open, readRecord(issuedInvoice, readJson(file), file), now, draw);
  }
}
