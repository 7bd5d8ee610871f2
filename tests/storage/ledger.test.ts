import { spawn } from 'node:child_process';
import { appendFileSync, cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { appendLedger, type NewLedgerEntry, readLedger } from '../../src/storage/ledger.ts';
import { openBook } from '../../src/storage/open-book.ts';
import { verifyBook } from '../../src/storage/verify-book.ts';
import { runKeyout } from '../end-to-end/run-keyout.ts';
import { programOf } from '../program-of.ts';

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
    const program = await programOf('tests/storage/append-many.ts');
    const codes = await Promise.all(
      [1, 2].map(
        () =>
          new Promise((resolve) =>
            spawn(process.execPath, [program, folder, JSON.stringify(entry), '60'], { stdio: 'inherit' }).on(
              'exit',
              resolve,
            ),
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

describe('the end of the ledger', () => {
  const written = (lines: number) => {
    const book = openBook(sampleBook());
    for (let turn = 0; turn < lines; turn += 1) appendLedger(book, entry);
    return { book, file: path.join(book.folder, 'ledger.jsonl'), head: path.join(book.folder, 'ledger-head.json') };
  };

  test('a stop between line and head is made good by the next entry, also twice in a row', () => {
    const { book, head } = written(1);
    for (let turn = 0; turn < 2; turn += 1) {
      const before = readFileSync(head, 'utf8');
      appendLedger(book, entry);
      writeFileSync(head, before);
      appendLedger(book, entry);
    }
    expect(readLedger(book)).toHaveLength(5);
    expect(verifyBook(book)).toEqual([]);
  });

  test.each<[string, (file: string, head: string) => void, RegExp]>([
    [
      'the last line altered',
      (file) => {
        const text = readFileSync(file, 'utf8');
        const at = text.lastIndexOf('"day":"2026-11-24"');
        writeFileSync(file, `${text.slice(0, at)}"day":"2026-11-23"${text.slice(at + 18)}`);
      },
      /line 3/,
    ],
    [
      'the last line cut off',
      (file) => writeFileSync(file, `${readFileSync(file, 'utf8').split('\n').slice(0, 2).join('\n')}\n`),
      /ledger\.jsonl/,
    ],
    ['the whole ledger removed', (file) => rmSync(file), /ledger\.jsonl/],
    ['the head removed', (_, head) => rmSync(head), /ledger-head\.json/],
  ])('%s is seen, and nothing is written over it', (_, change, where) => {
    const { book, file, head } = written(3);
    change(file, head);
    expect(verifyBook(book).map((each) => each.where)).toEqual([expect.stringMatching(where)]);
    expect(() => appendLedger(book, entry)).toThrow(/copy/);
  });
});

describe('keyout verify', () => {
  const finished = path.join(root, 'finished');
  beforeAll(() => runKeyout(['demo', finished], root));
  const damaged = (change: (folder: string) => void) => {
    const folder = path.join(mkdtempSync(path.join(root, 'verify-')), 'book');
    cpSync(finished, folder, { recursive: true });
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
      'an altered record behind a number',
      (folder) => appendFileSync(path.join(folder, 'issued/numbers/INV-0003.json'), ' '),
      'issued/numbers/INV-0003.json',
    ],
    [
      'a missing record behind a number',
      (folder) => rmSync(path.join(folder, 'issued/numbers/INV-0003.json')),
      'issued/numbers/INV-0003.json',
    ],
    [
      'an extra file among the numbers',
      (folder) => writeFileSync(path.join(folder, 'issued/numbers/INV-0009.json'), '{}'),
      'issued/numbers/INV-0009.json',
    ],
    [
      'a folder in the place of a file',
      (folder) => {
        rmSync(path.join(folder, invoice));
        mkdirSync(path.join(folder, invoice));
      },
      invoice,
    ],
    ['a head that is no head', (folder) => writeFileSync(path.join(folder, 'ledger-head.json'), '{}'), /ledger-head/],
    [
      'an altered handover sheet',
      (folder) => appendFileSync(path.join(folder, 'out/2026-11-24/2026-11-24-KX4D-handover.pdf'), ' '),
      'out/2026-11-24/2026-11-24-KX4D-handover.pdf',
    ],
    [
      'a missing handover sheet',
      (folder) => rmSync(path.join(folder, 'out/2026-11-24/2026-11-24-KX4D-handover.pdf')),
      'out/2026-11-24/2026-11-24-KX4D-handover.pdf',
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
