import { spawnSync } from 'node:child_process';
import {
  appendFileSync,
  cpSync,
  existsSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { parse } from 'csv-parse/sync';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { IssuedInvoice } from '../../src/records/issued-invoice.ts';
import { readXml } from '../exports/read-xml.ts';
import { ciiFigures, ublFigures } from '../exports/structured-figures.ts';
import { callKeyout } from './call-keyout.ts';
import { runKeyout } from './run-keyout.ts';

const root = mkdtempSync(path.join(tmpdir(), 'keyout-export-'));
const finished = path.join(root, 'finished');
beforeAll(() => {
  expect(runKeyout(['demo', finished], root).exitCode).toBe(0);
});
afterAll(() => rmSync(root, { recursive: true, force: true }));

function freshBook() {
  const folder = mkdtempSync(path.join(root, 'book-'));
  cpSync(finished, folder, { recursive: true });
  const out = path.join(folder, 'for the bookkeeper');
  const run = (...words: string[]) => callKeyout([...words, '--book', folder, '--today', '2026-12-15']);
  const november = ['--from', '2026-11-01', '--to', '2026-11-30'];
  const exported = (...words: string[]) => run('export', ...november, '--out', out, ...words);
  return { folder, out, run, exported };
}

function bytesOf(folder: string): Record<string, string> {
  const names = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((name) => /\.\w+$/.test(name));
  return Object.fromEntries(names.sort().map((name) => [name, readFileSync(path.join(folder, name), 'base64')]));
}
const rowsOf = (folder: string, name: string) =>
  parse(readFileSync(path.join(folder, name)), { columns: true, bom: true }) as Record<string, string>[];

test("the file inside an invoice's PDF says the same figures as the one beside it", () => {
  const issued = path.join(finished, 'issued', '2026', 'INV-0001');
  const detached = path.join(root, 'detached.xml');
  const result = spawnSync('pdfdetach', ['-save', '1', '-o', detached, path.join(issued, 'invoice.pdf')]);
  expect(result.status).toBe(0);
  const inside = ciiFigures(readXml(readFileSync(detached, 'utf8')));
  expect(inside).toEqual(ublFigures(readXml(readFileSync(path.join(issued, 'invoice.xml'), 'utf8'))));
  const record = JSON.parse(readFileSync(path.join(issued, 'invoice.json'), 'utf8')) as IssuedInvoice;
  expect(Math.round(Number(inside.totals.due) * 100)).toBe(record.totals.dueMinorUnits);
});

describe('keyout export', () => {
  test('writes the period twice to the same bytes, and every control total agrees', async () => {
    const { out, exported } = freshBook();
    expect(await exported()).toMatchObject({ exitCode: 0, err: '' });
    const first = bytesOf(out);
    expect(await exported()).toMatchObject({ exitCode: 0, err: '' });
    expect(bytesOf(out)).toEqual(first);
    const controls = rowsOf(out, 'control-totals.csv');
    expect(controls.filter((row) => row.difference !== '' && row.difference !== '0')).toEqual([]);
    expect(rowsOf(out, 'register.csv').map((row) => row.number)).toContain('INV-0001');
    expect(rowsOf(out, 'trips.csv')).toHaveLength(1);
  });

  test('the structured files are those that were issued', async () => {
    const { folder, out, exported } = freshBook();
    await exported();
    const issued = readFileSync(path.join(folder, 'issued', '2026', 'INV-0001', 'invoice.xml'), 'utf8');
    expect(readFileSync(path.join(out, 'structured', 'INV-0001.xml'), 'utf8')).toBe(issued);
  });

  test('with decimal commas and without a byte-order mark when told so', async () => {
    const { out, exported } = freshBook();
    await exported();
    expect(readFileSync(path.join(out, 'register.csv'), 'utf8').startsWith('\uFEFFnumber,')).toBe(true);
    await exported('--decimal-comma', '--no-bom');
    const text = readFileSync(path.join(out, 'register.csv'), 'utf8');
    expect(text.startsWith('number;type;')).toBe(true);
    expect(text).toMatch(/;\d+,\d\d;/);
  });

  test('a broken chain and an altered document are refused, and nothing is written', async () => {
    const broken = freshBook();
    appendFileSync(path.join(broken.folder, 'ledger.jsonl'), '{}\n');
    expect(await broken.exported()).toMatchObject({ exitCode: 1, out: '' });
    expect(existsSync(broken.out)).toBe(false);
    const altered = freshBook();
    appendFileSync(path.join(altered.folder, 'issued', '2026', 'INV-0002', 'invoice.json'), ' ');
    const result = await altered.exported();
    expect(result).toMatchObject({ exitCode: 1, out: '' });
    expect(result.err).toContain('INV-0002');
    expect(existsSync(altered.out)).toBe(false);
  });

  test('a folder that holds something else is left alone', async () => {
    const { out, exported } = freshBook();
    await exported();
    writeFileSync(path.join(out, 'my notes.txt'), 'mine');
    const before = bytesOf(out);
    const result = await exported('--decimal-comma');
    expect(result.exitCode).toBe(3);
    expect(result.err).toContain('my notes.txt');
    expect(bytesOf(out)).toEqual(before);
    expect(readdirSync(path.dirname(out)).filter((name) => /temporary|former/.test(name))).toEqual([]);
  });

  test('it does not go among the records of the book', async () => {
    const { folder, run } = freshBook();
    const out = path.join(folder, 'issued', 'x');
    const result = await run('export', '--from', '2026-11-01', '--to', '2026-11-30', '--out', out);
    expect(result).toMatchObject({ exitCode: 2, out: '' });
    expect(existsSync(out)).toBe(false);
  });

  test('without --out it goes into the book, and the book stays whole', async () => {
    const { folder, run } = freshBook();
    expect((await run('export', '--from', '2026-11-01', '--to', '2026-11-30')).exitCode).toBe(0);
    expect(existsSync(path.join(folder, 'out', 'export-2026-11-01-2026-11-30', 'journal.csv'))).toBe(true);
    expect((await run('verify')).exitCode).toBe(0);
  });

  test.each([
    [['--to', '2026-11-30'], 'first day'],
    [['--from', '2026-11-01', '--to', '2026-11-31'], 'not a date'],
    [['--from', '2026-12-01', '--to', '2026-11-30'], 'ends before'],
  ])('%j is a wrong call', async (words, message) => {
    const { run } = freshBook();
    const result = await run('export', ...words);
    expect(result.exitCode).toBe(2);
    expect(result.err).toContain(message);
  });
});
