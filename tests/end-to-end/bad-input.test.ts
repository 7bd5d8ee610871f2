import { spawnSync } from 'node:child_process';
import {
  chmodSync,
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { runKeyout } from './run-keyout.ts';

const folder = mkdtempSync(path.join(tmpdir(), 'keyout-bad-'));
const samples = path.resolve(import.meta.dirname, '../../sample-jobs');
const mainFile = path.resolve(import.meta.dirname, '../../dist/main.js');
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const job = '2026-11-24-KX4D';
const jobPath = `jobs/2026/${job}.json`;
let count = 0;

function newBook(): string {
  const book = path.join(folder, `book-${++count}`);
  cpSync(samples, book, { recursive: true });
  return book;
}

function edit(book: string, file: string, change: (text: string) => string): void {
  const place = path.join(book, file);
  writeFileSync(place, change(readFileSync(place, 'utf8')));
}

type Json = { [name: string]: unknown };
const inJson = (change: (record: Json) => void) => (text: string) => {
  const record = JSON.parse(text) as Json;
  change(record);
  return JSON.stringify(record);
};

/** Everything below a folder, with its bytes. */
function snapshot(book: string): Readonly<Record<string, string>> {
  const files = readdirSync(book, { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile());
  return Object.fromEntries(
    files.map((entry) => {
      const file = path.join(entry.parentPath, entry.name);
      return [path.relative(book, file), readFileSync(file, 'latin1')];
    }),
  );
}

// what is wrong => how it is made wrong, the command, what the message must name
const cases: readonly (readonly [string, (book: string) => void, readonly string[], readonly RegExp[]])[] = [
  [
    'broken JSON',
    (book) => edit(book, jobPath, (text) => text.replace('"day":', '"day"')),
    ['check', job],
    [/KX4D\.json/, /line \d+/],
  ],
  [
    'a wrong type',
    (book) =>
      edit(
        book,
        jobPath,
        inJson((record) => Object.assign(record, { notes: 7 })),
      ),
    ['check', job],
    [/KX4D\.json, notes/, /must be text/],
  ],
  [
    'an unknown field',
    (book) =>
      edit(
        book,
        jobPath,
        inJson((record) => Object.assign(record, { colour: 'red' })),
      ),
    ['check', job],
    [/KX4D\.json/, /colour/],
  ],
  [
    'an impossible date',
    (book) =>
      edit(
        book,
        jobPath,
        inJson((record) => Object.assign(record, { day: '2026-02-31' })),
      ),
    ['check', job],
    [/KX4D\.json, day/, /date that exists/],
  ],
  [
    'volts out of range',
    (book) => edit(book, jobPath, (text) => text.replace('12.57', '125.7')),
    ['check', job],
    [/probePoints/, /between -60 and 60/],
  ],
  [
    'an unknown payer',
    (book) => edit(book, jobPath, (text) => text.replace('"north-lattice"', '"nobody"')),
    ['check', job],
    [/identity\.payer/, /nobody/],
  ],
  [
    'an unknown device',
    (book) => edit(book, jobPath, (text) => text.replace('"orvelane-3"', '"tallow-9"')),
    ['check', job],
    [/device\.profile/, /tallow-9/],
  ],
  [
    'a template that cannot be read',
    (book) => mkdirSync(path.join(book, 'templates/handover.hbs'), { recursive: true }),
    ['handover', job],
    [/templates.handover\.hbs/],
  ],
  [
    'a template with an unknown tag',
    (book) => {
      mkdirSync(path.join(book, 'templates'), { recursive: true });
      writeFileSync(
        path.join(book, 'templates/handover.hbs'),
        '<document title="x" lang="en">\n<blink>no</blink>\n</document>\n',
      );
    },
    ['handover', job],
    [/handover\.hbs/, /line 2/, /blink/],
  ],
  [
    'a template with a name that does not exist',
    (book) => {
      mkdirSync(path.join(book, 'templates'), { recursive: true });
      writeFileSync(
        path.join(book, 'templates/handover.hbs'),
        '<document title="x" lang="en">\n<p>{{nothing}}</p>\n</document>\n',
      );
    },
    ['handover', job],
    [/handover\.hbs/, /nothing/],
  ],
  [
    'a rate card without an hourly price',
    (book) =>
      edit(
        book,
        'rates.json',
        inJson((record) => Object.assign(record, { hourly: [] })),
      ),
    ['bill', job],
    [/rates\.json, hourly/, /at least one/],
  ],
  [
    'a payer whose id is not its file’s name',
    (book) => edit(book, 'payers/oro-mesa.json', (text) => text.replace('"oro-mesa"', '"other"')),
    ['check', job],
    [/oro-mesa\.json, id/],
  ],
  ['a job that does not exist', () => {}, ['check', '2026-11-24-ZZZZ'], [/ZZZZ\.json/, /Check the name/]],
  ['a name that is no job’s', () => {}, ['check', '../../etc/passwd'], [/not a job's name/]],
];

describe('bad input', () => {
  test.each(cases)('%s is named with its place, shows no stack, and changes no file', (_, spoil, words, named) => {
    const book = newBook();
    spoil(book);
    const before = snapshot(book);
    const result = runKeyout([...words, '--book', book], folder);
    expect(result.exitCode === 2 || result.exitCode === 3).toBe(true);
    for (const pattern of named) expect(result.err).toMatch(pattern);
    expect(result.err).toMatch(/ {2}where: .+\n {2}to do: .+/);
    expect(result.err).not.toMatch(/\n\s+at .+:\d+:\d+/);
    expect(result.out).toBe('');
    expect(snapshot(book)).toEqual(before);
  });

  test('a missing photograph stops the sheet by its name, and changes no file', () => {
    const book = newBook();
    const photographs = [{ file: 'joint.jpg', shows: 'joint' }];
    edit(
      book,
      jobPath,
      inJson((record) => Object.assign(record, { photographs })),
    );
    const before = snapshot(book);
    const result = runKeyout(['handover', job, '--book', book], folder);
    expect(result.exitCode).toBe(1);
    expect(`${result.out}${result.err}`).toContain('joint.jpg');
    expect(snapshot(book)).toEqual(before);
  });

  test('a book that may not be written is named, and stays as it was', () => {
    const book = newBook();
    chmodSync(folder, 0o755);
    for (const entry of readdirSync(book, { recursive: true, withFileTypes: true }))
      chmodSync(path.join(entry.parentPath, entry.name), entry.isDirectory() ? 0o555 : 0o444);
    chmodSync(book, 0o555);
    const before = snapshot(book);
    // the super-user may write anywhere, so the command then runs as nobody
    const result = spawnSync(process.execPath, [mainFile, 'handover', job, '--book', book], {
      encoding: 'utf8',
      cwd: '/',
      ...(process.getuid?.() === 0 ? { uid: 65_534, gid: 65_534 } : {}),
    });
    expect(result.status).toBe(3);
    expect(result.stderr).toMatch(/may not be written|not allowed|permission/i);
    expect(result.stderr).toContain(book);
    expect(result.stderr).not.toMatch(/\n\s+at .+:\d+:\d+/);
    expect(snapshot(book)).toEqual(before);
    expect(existsSync(path.join(book, 'out'))).toBe(false);
    chmodSync(book, 0o755);
    for (const entry of readdirSync(book, { recursive: true, withFileTypes: true }))
      if (entry.isDirectory()) chmodSync(path.join(entry.parentPath, entry.name), 0o755);
  });
});
