import { cpSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { runKeyout } from '../end-to-end/run-keyout.ts';
import { readScript, type Sitting, typeInto } from './typist.ts';

const job = '2026-11-24-KX4D';
const folder = mkdtempSync(path.join(tmpdir(), 'keyout-typed-'));
const samples = path.resolve(import.meta.dirname, '../../sample-jobs');
const script = readScript('van-job.txt');

function newBook(name: string, without: boolean): string {
  const book = path.join(folder, name);
  cpSync(samples, book, { recursive: true });
  if (without) rmSync(path.join(book, 'jobs/2026', `${job}.json`));
  return book;
}

const words = (book: string) => ['fit', job, '--book', book, '--today', '2026-11-24'];

function documentsOf(book: string): readonly Buffer[] {
  const bill = runKeyout(['bill', job, '--book', book, '--today', '2026-11-24'], folder);
  expect(bill.err).toBe('');
  const invoice = path.join(book, 'issued/2026/INV-0001/invoice.pdf');
  return [path.join(book, 'out/2026-11-24', `${job}-handover.pdf`), invoice].map((file) => readFileSync(file));
}

let sitting: Sitting;
const typed = newBook('typed', true);

beforeAll(async () => {
  sitting = await typeInto(words(typed), script, { folder });
}, 120_000);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe('the van job typed into a real terminal', () => {
  test('ends well, with every line of the script used', () => {
    expect(sitting.unused).toEqual([]);
    expect(sitting.exitCode).toBe(0);
  });

  test('shows each conclusion as soon as the readings allow it, and the readings as a table', () => {
    const screen = sitting.screen;
    expect(screen.indexOf('Red with white stripe (P1) is constant')).toBeGreaterThan(0);
    expect(screen.indexOf('Red with white stripe (P1) is constant')).toBeLessThan(screen.indexOf('Wire 2: colour'));
    expect(screen).toMatch(/supply +12\.58 +12\.50 +12\.41 +10\.40 +14\.10/);
  });

  test('gives the same two documents as the sample file, byte for byte', () => {
    const sample = newBook('sample', false);
    expect(runKeyout(['handover', job, '--book', sample, '--today', '2026-11-24'], folder).err).toBe('');
    const [sheet, invoice] = documentsOf(typed);
    const [sampleSheet, sampleInvoice] = documentsOf(sample);
    expect(sheet?.equals(sampleSheet ?? Buffer.alloc(0))).toBe(true);
    expect(invoice?.equals(sampleInvoice ?? Buffer.alloc(0))).toBe(true);
  });

  test('takes at most 1,200 keystrokes: five minutes at four a second', () => {
    // 240 keystrokes a minute is 48 words a minute of five letters (common practice, no source)
    expect(sitting.keystrokes).toBeLessThanOrEqual(1200);
  });
});
