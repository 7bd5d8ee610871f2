import { cpSync, mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { finishDay } from '../../src/operations/finish-day.ts';
import type { Moment } from '../../src/operations/moment.ts';
import { readIssued } from '../../src/storage/issued.ts';
import { openBook } from '../../src/storage/open-book.ts';

/** A moment on the sample day. */
const moment: Moment = { now: '2026-11-24T18:00:00Z', today: '2026-11-24', van: null };

/** A copy of the sample book in a folder of its own, its day finished: the book, what became of the jobs, the invoices. */
export async function finishedSampleDay() {
  const folder = mkdtempSync(path.join(tmpdir(), 'keyout-golden-'));
  cpSync(path.resolve(import.meta.dirname, '../../sample-jobs'), folder, { recursive: true });
  const book = await openBook(folder);
  const { finished } = await finishDay(book, '2026-11-24', moment);
  return { folder, book, finished, invoices: readIssued(book).map((each) => each.invoice) };
}
