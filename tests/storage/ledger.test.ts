import { spawn } from 'node:child_process';
import { appendFileSync, cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { appendLedger, type NewLedgerEntry, readLedger } from '../../src/storage/ledger.ts';
import { openBook } from '../../src/storage/open-book.ts';
import { verifyBook } from '../../src/storage/verify-book.ts';
import { runKeyout } from '../end-to-end/run-keyout.ts';

const root = mkdtempSync(path.join(tmpdir(), 'keyout-ledger-'));
afterAll(() => rmSync(root, { recursive: true, force: true }));

function sampleBook() {
  const folder = mkdtempSync(path.join(root, 'book-'));
  cpSync(path.resolve(import.meta.dirname, '../../sample-jobs'), folder, { recursive: true });
  return folder;
}
const entry: NewLedgerEntry = {
  event: 'handed over',
  written: '2026-11-24T12:00:00Z',
  day: '2026-11-24',
  job: '2026-11-24-KX4D',
  digest: 'a'.repeat(64),
  files: [],
};

describe('the ledger', () => {
  test('two processes adding at once leave one unbroken chain', async () => {
    const folder = sampleBook();
    const module = (name: string) => JSON.stringify(path.resolve(import.meta.dirname, `../../dist/storage/${name}.js`));
    const script = `const { openBook } = await import(${module('open-book')}); const { appendLedger } = await import(${module('ledger')}); const book = openBook(${JSON.stringify(folder)}); for (let turn = 0; turn < 60; turn += 1) appendLedger(book, ${JSON.stringify(entry)});`;
    const codes = await Promise.all(
      [1, 2].map(
        () =>
          new Promise((resolve) =>
            spawn(process.execPath, ['--input-type=module', '-e', script], { stdio: 'inherit' }).on('exit', resolve),
          ),
      ),
    );
    expect(codes).toEqual([0, 0]);
    expect(readLedger(openBook(folder)).map((each) => each.sequence)).toEqual(
      Array.from({ length: 120 }, (_, index) => index + 1),
    );
  });

  test('a line cut while it was written is dropped by the next entry', () => {
    const book = openBook(sampleBook());
    appendLedger(book, entry);
    appendFileSync(path.join(book.folder, 'ledger.jsonl'), '{"event":"iss');
    appendLedger(book, entry);
    expect(readLedger(book)).toHaveLength(2);
  });
});

describe('keyout verify', () => {
  const damaged = (change: (folder: string) => void) => {
    const folder = path.join(mkdtempSync(path.join(root, 'verify-')), 'book');
    runKeyout(['demo', folder], root);
    change(folder);
    return verifyBook(openBook(folder));
  };
  const invoice = 'issued/2026/INV-0002/invoice.json';

  test('finds nothing in a whole book', () => {
    expect(damaged(() => {})).toEqual([]);
  });

  test.each<[string, (folder: string) => void, string | RegExp]>([
    ['an altered file', (folder) => appendFileSync(path.join(folder, invoice), ' '), invoice],
    ['a missing file', (folder) => rmSync(path.join(folder, invoice)), invoice],
    [
      'an extra file',
      (folder) => writeFileSync(path.join(folder, 'issued/2026/INV-0002/extra.txt'), ''),
      'issued/2026/INV-0002/extra.txt',
    ],
    [
      'a changed ledger line',
      (folder) => {
        const file = path.join(folder, 'ledger.jsonl');
        writeFileSync(file, readFileSync(file, 'utf8').replace('INV-0001', 'INV-0009'));
      },
      /ledger\.jsonl, line \d+/,
    ],
  ])('finds %s and names it', (_, change, where) => {
    expect(damaged(change).map((each) => each.where)).toEqual([expect.stringMatching(where)]);
  });
});
