import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { runKeyout } from './run-keyout.ts';

type FinishedJob = {
  job: string;
  state: string;
  sheet: string | null;
  invoice: string | null;
  invoicePdf: string | null;
  grossMinorUnits: number | null;
  open: string[];
  findings: { rule: string }[];
};

const folder = mkdtempSync(path.join(tmpdir(), 'keyout-day-'));
const book = path.join(folder, 'book');
let first: { jobs: FinishedJob[] };

beforeAll(() => {
  const demo = runKeyout(['demo', book, '--json'], folder);
  expect(demo.err).toBe('');
  first = JSON.parse(demo.out) as { jobs: FinishedJob[] };
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const jobNamed = (code: string) => {
  const found = first.jobs.find((job) => job.job.endsWith(code));
  if (found === undefined) throw new Error(`no job ${code}`);
  return found;
};
const textOf = (file: string) => spawnSync('pdftotext', ['-layout', file, '-'], { encoding: 'utf8' }).stdout;
const inBook = (file: string | null) => path.resolve(book, file ?? 'nothing');

describe('the sample day', () => {
  test('four of five vehicles are handed over and billed with consecutive numbers, the truck is blocked', () => {
    expect(first.jobs.map((job) => job.state).sort()).toEqual(['blocked', 'done', 'done', 'done', 'done']);
    expect(jobNamed('7QTR')).toMatchObject({ state: 'blocked', sheet: null, invoice: null });
    expect(
      first.jobs
        .map((job) => job.invoice)
        .filter((number) => number !== null)
        .sort(),
    ).toEqual(['INV-0001', 'INV-0002', 'INV-0003', 'INV-0004']);
  });

  test('the truck is blocked because its ignition wire drops out while cranking', () => {
    const rules = jobNamed('7QTR').findings.map((finding) => finding.rule);
    // one fault, told once: that its verdict is ruled out and its role not proven follows from it
    expect(rules).toEqual(['ignition-holds-through-crank']);
  });

  test('the sheet of the van names vehicle, device, joints and signatures, read back by an independent reader', () => {
    const text = textOf(inBook(jobNamed('KX4D').sheet));
    for (const word of [
      'Bluestem Parcel',
      'VLT 4417',
      'Orvelane 3',
      'OV3-004417',
      'Łukasz Tessmer',
      'Ada Quill',
      'rear dome light',
    ])
      expect(text).toContain(word);
    expect(text).toMatch(/page 1 of 2/i);
  });

  test('every font of every document is embedded and every document has at most two pages', () => {
    for (const job of first.jobs.filter((each) => each.sheet !== null)) {
      for (const file of [inBook(job.sheet), inBook(job.invoicePdf)]) {
        const fonts = spawnSync('pdffonts', [file], { encoding: 'utf8' }).stdout.trim().split('\n').slice(2);
        expect(fonts.length).toBeGreaterThan(0);
        for (const font of fonts) expect(font).toMatch(/\s+yes\s+(yes|no)\s+yes\s+\d+/);
        const pages = Number(/Pages:\s+(\d+)/.exec(spawnSync('pdfinfo', [file], { encoding: 'utf8' }).stdout)?.[1]);
        expect(pages).toBeGreaterThanOrEqual(1);
        expect(pages).toBeLessThanOrEqual(2);
      }
    }
  });

  test('the trip is shared so that the shares on the invoices and the blocked job sum to what it cost', () => {
    const text = textOf(inBook(jobNamed('KX4D').invoicePdf));
    expect(text).toContain('INV-');
    expect(text).toContain('PO-20881');
    expect(text.replace(/\s+/g, ' ')).toContain('North Lattice Services Inc.');
  });

  test('running the day again changes nothing and issues nothing twice', () => {
    const before = filesOf(book);
    const again = runKeyout(['day', '2026-11-24', '--book', book, '--json'], folder);
    expect(JSON.parse(again.out)).toEqual(first);
    expect(again.exitCode).toBe(1);
    expect(filesOf(book)).toEqual(before);
  });

  test('a second demo elsewhere writes the same bytes for every sheet and invoice', () => {
    const other = path.join(folder, 'other');
    runKeyout(['demo', other], folder);
    const documents = (root: string) => filesOf(root).filter(([name]) => name?.endsWith('.pdf'));
    expect(documents(other)).toEqual(documents(book));
    expect(documents(book).length).toBe(8);
  });
});

describe('bad input', () => {
  const broken = (file: string, change: (text: string) => string) => {
    const copy = mkdtempSync(path.join(folder, 'bad-'));
    cpSync(path.resolve(import.meta.dirname, '../../sample-jobs'), copy, { recursive: true });
    const target = path.join(copy, file);
    writeFileSync(target, change(readFileSync(target, 'utf8')));
    return runKeyout(['day', '2026-11-24', '--book', copy], folder);
  };
  const van = 'jobs/2026/2026-11-24-KX4D.json';

  test.each([
    ['broken JSON', van, (text: string) => text.replace('"panels": [', '"panels": [,'), /KX4D\.json/],
    ['a wrong type', van, (text: string) => text.replace('"volts": 12.57', '"volts": "twelve"'), /volts/],
    ['an impossible date', van, (text: string) => text.replace('"day": "2026-11-24"', '"day": "2026-02-30"'), /day/],
    ['volts out of range', van, (text: string) => text.replace('"volts": 12.57', '"volts": 1257'), /volts/],
    ['an unknown field', van, (text: string) => text.replace('"supply": [', '"suply": [], "supply": ['), /suply/],
    [
      'an unknown payer',
      van,
      (text: string) => text.replace('"payer": "north-lattice"', '"payer": "nobody"'),
      /nobody/,
    ],
    [
      'an unknown device',
      van,
      (text: string) => text.replace('"profile": "orvelane-3"', '"profile": "mystery"'),
      /mystery/,
    ],
    ['a missing book field', 'book.json', (text: string) => text.replace('"currency": "USD",', ''), /currency/],
  ])('%s gets a clear error with file and field, exit code 3 and no stack', (_, file, change, mentions) => {
    const result = broken(file, change);
    expect(result.err).toMatch(mentions);
    expect(result.err).toMatch(/where: /);
    expect(result.err).not.toMatch(/\n\s+at /);
    expect(result.exitCode).toBe(3);
  });
});

function filesOf(root: string): [string, string][] {
  return readdirSync(root, { recursive: true, withFileTypes: true, encoding: 'utf8' })
    .filter((entry) => entry.isFile())
    .map((entry) => path.join(entry.parentPath, entry.name))
    .sort()
    .map((file) => [path.relative(root, file), readFileSync(file, 'base64')]);
}
