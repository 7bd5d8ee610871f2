import { cpSync, mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import type { World } from '../../src/commands/command.ts';
import { finishDay } from '../../src/operations/finish-day.ts';
import { readIssued } from '../../src/storage/issued.ts';
import { openBook } from '../../src/storage/open-book.ts';

const silent = () => {};

/** A world that stands still on the sample day. */
export const stillWorld = (bookFolder: string): World => ({
  say: silent,
  tell: silent,
  today: () => '2026-11-24',
  now: () => '2026-11-24T18:00:00Z',
  bookFolder,
  json: false,
  mayAsk: false,
  plain: false,
  columns: 120,
  random: () => 0.5,
});

/** A copy of the sample book in a folder of its own, its day finished: the book, what became of the jobs, the invoices. */
export async function finishedSampleDay() {
  const folder = mkdtempSync(path.join(tmpdir(), 'keyout-golden-'));
  cpSync(path.resolve(import.meta.dirname, '../../sample-jobs'), folder, { recursive: true });
  const book = await openBook(folder);
  const finished = await finishDay(book, '2026-11-24', stillWorld(folder));
  return { folder, book, finished, invoices: readIssued(book).map((each) => each.invoice) };
}
