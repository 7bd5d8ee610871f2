import { existsSync, readdirSync } from 'node:fs';
import path from 'node:path';
import { type IssuedInvoice, issuedInvoice } from '../records/issued-invoice.ts';
import { readRecord } from '../records/read-record.ts';
import { completeIssued } from './issue-document.ts';
import { readLedger } from './ledger.ts';
import type { OpenBook } from './open-book.ts';
import { readJson } from './read-json.ts';

/**
 * Makes good what a stop between number and ledger entry left out; run before anything is issued.
 * @param open the open book
 * @param now the moment, UTC
 * @param render draws the PDF
 */
export async function completeUnfinished(
  open: OpenBook,
  now: string,
  render: (numbered: IssuedInvoice) => Promise<Uint8Array>,
): Promise<void> {
  const numbers = path.join(open.folder, 'issued', 'numbers');
  if (!existsSync(numbers)) return;
  const entered = new Set(
    readLedger(open).flatMap((entry) => (entry.event === 'issued' || entry.event === 'credited' ? [entry.number] : [])),
  );
  for (const name of readdirSync(numbers)
    .filter((each) => each.endsWith('.json'))
    .sort()) {
    if (entered.has(name.slice(0, -5))) continue;
    const file = path.join(numbers, name);
    await completeIssued(open, readRecord(issuedInvoice, readJson(file), file), now, render);
  }
}
