import { cpSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { hostname, tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { draftInvoice } from '../../src/operations/draft-invoice.ts';
import type { IssuedInvoice } from '../../src/records/issued-invoice.ts';
import { changeBook } from '../../src/storage/change-book.ts';
import type { DrawFiles } from '../../src/storage/changing-book.ts';
import { issueDocument } from '../../src/storage/issue-document.ts';
import { readJob } from '../../src/storage/jobs.ts';
import { readLedger } from '../../src/storage/ledger.ts';
import { openBook } from '../../src/storage/open-book.ts';
import { verifyBook } from '../../src/storage/verify-book.ts';

const root = mkdtempSync(path.join(tmpdir(), 'keyout-stop-'));
afterAll(() => rmSync(root, { recursive: true, force: true }));
const samples = path.resolve(import.meta.dirname, '../../sample-jobs');
const deadProcess = 2 ** 22 + 1;
const draw: DrawFiles = async (numbered) => [{ name: 'invoice.pdf', content: `drawing of ${numbered.number}` }];
let draft: IssuedInvoice;
beforeAll(async () => {
  const book = openBook(samples);
  draft = await draftInvoice(book, [readJob(book, '2026-11-24-KX4D')], '2026-11-24');
});

function emptyBook() {
  const folder = mkdtempSync(path.join(root, 'book-'));
  cpSync(samples, folder, { recursive: true });
  const book = openBook(folder);
  const issue = (by = draw) =>
    changeBook(book, { now: '2026-11-24T18:00:00Z', draw: by }, (changing) =>
      issueDocument(changing, { draft, van: null }),
    );
  const visit = () => changeBook(book, { now: '2026-11-24T19:00:00Z', draw }, async () => undefined);
  return { folder, book, issue, visit };
}

/** Takes the second invoice back to where a stop right after its number was given would have left it. */
async function stoppedAfterNumber(goOn: (places: { issued: string; aside: string }) => void) {
  const { folder, book, issue, visit } = emptyBook();
  await issue();
  const ledger = ['ledger.jsonl', 'ledger-head.json'].map((name) => path.join(folder, name));
  const before = ledger.map((file) => readFileSync(file));
  await issue();
  for (const [place, file] of ledger.entries()) writeFileSync(file, before[place] ?? '');
  const aside = path.join(folder, 'issued/unfinished/INV-0002');
  mkdirSync(path.dirname(aside), { recursive: true });
  goOn({ issued: path.join(folder, 'issued/2026/INV-0002'), aside });
  expect(verifyBook(book).length).toBeGreaterThan(0);
  await visit();
  return { book, folder, issue };
}

test.each<[string, (places: { issued: string; aside: string }) => void]>([
  [
    'before the files stand in their folder',
    ({ issued, aside }) => {
      renameSync(issued, aside);
      cpSync(path.join(aside, 'invoice.json'), path.join(aside, 'number.json'));
    },
  ],
  ['and the files aside were lost', ({ issued }) => rmSync(issued, { recursive: true })],
  ['and before the ledger entry', () => {}],
])('a stop after the number was given, %s, is made good by the next change', async (_, goOn) => {
  const { book, folder, issue } = await stoppedAfterNumber(goOn);
  expect(readLedger(book).map((entry) => (entry.event === 'issued' ? entry.number : ''))).toEqual([
    'INV-0001',
    'INV-0002',
  ]);
  expect(readFileSync(path.join(folder, 'issued/2026/INV-0002/invoice.pdf'), 'utf8')).toBe('drawing of INV-0002');
  expect(readdirSync(path.join(folder, 'issued/2026/INV-0002')).sort()).toEqual(['invoice.json', 'invoice.pdf']);
  expect((await issue()).number).toBe('INV-0003');
});

test('a stop before the number was given leaves no number, and its files are swept away', async () => {
  const { folder, book, issue, visit } = emptyBook();
  await issue();
  mkdirSync(path.join(folder, 'issued/unfinished/INV-0002'), { recursive: true });
  writeFileSync(path.join(folder, 'issued/unfinished/INV-0002/invoice.json'), '{"half":');
  writeFileSync(path.join(folder, `issued/numbers/x.${deadProcess}.temporary`), '');
  writeFileSync(path.join(folder, `jobs/2026/2026-11-24-KX4D.json.${deadProcess}.temporary`), '');
  const folderLeft = path.join(folder, `out/export.${deadProcess}.temporary`);
  mkdirSync(folderLeft, { recursive: true });
  writeFileSync(path.join(folderLeft, 'register.csv'), '');
  await visit();
  expect(verifyBook(book)).toEqual([]);
  expect(readdirSync(path.join(folder, 'out'))).toEqual([]);
  expect(readdirSync(path.join(folder, 'jobs/2026')).filter((name) => name.includes('temporary'))).toEqual([]);
  expect((await issue()).number).toBe('INV-0002');
});

test('a drawing that fails leaves no number behind', async () => {
  const { book, issue } = emptyBook();
  await expect(
    issue(async () => {
      throw new Error('the template is wrong');
    }),
  ).rejects.toThrow('the template is wrong');
  expect(readLedger(book)).toEqual([]);
  expect((await issue()).number).toBe('INV-0001');
});

test('a lock whose owner died is taken over, also by several at once', async () => {
  const { folder, book, issue } = emptyBook();
  const owner = JSON.stringify({ process: deadProcess, host: hostname(), since: Date.now() });
  writeFileSync(path.join(folder, 'book.lock'), owner);
  const numbers = (await Promise.all([issue(), issue(), issue()])).map((each) => each.number);
  expect(numbers.sort()).toEqual(['INV-0001', 'INV-0002', 'INV-0003']);
  expect(readLedger(book)).toHaveLength(3);
});

test('a book whose whole ledger was lost is not silently given a new one', async () => {
  const { folder, issue } = emptyBook();
  await issue();
  await issue();
  rmSync(path.join(folder, 'ledger.jsonl'));
  rmSync(path.join(folder, 'ledger-head.json'));
  await expect(issue()).rejects.toThrow(/does not know 2 numbers/);
});
