import { type ChildProcess, spawn } from 'node:child_process';
import { cpSync, existsSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { readLedger } from '../../src/storage/ledger.ts';
import { openBook } from '../../src/storage/open-book.ts';
import { verifyBook } from '../../src/storage/verify-book.ts';
import { runKeyout } from '../end-to-end/run-keyout.ts';
import { programOf } from '../program-of.ts';

const root = mkdtempSync(path.join(tmpdir(), 'keyout-concurrent-'));
afterAll(() => rmSync(root, { recursive: true, force: true }));
const samples = path.resolve(import.meta.dirname, '../../sample-jobs');
const script = await programOf('tests/storage/issue-many.ts');
const draftFile = path.join(root, 'draft.json');

beforeAll(() => {
  const drafts = runKeyout(['bill', '2026-11-24-KX4D', '--draft', '--json', '--book', samples], root);
  writeFileSync(draftFile, JSON.stringify((JSON.parse(drafts.out) as unknown[])[0]));
});

const signs = '23456789ABCDEFGHJKMNPQRSTVWXYZ';
const jobNames = (count: number) =>
  Array.from(
    { length: count },
    (_, place) =>
      `2026-11-24-A${signs[Math.trunc(place / 900)]}${signs[Math.trunc(place / 30) % 30]}${signs[place % 30]}`,
  );

function bookWithJobs(jobs: readonly string[]) {
  const folder = mkdtempSync(path.join(root, 'book-'));
  cpSync(samples, folder, { recursive: true });
  const jobsFile = path.join(folder, 'job-names.json');
  writeFileSync(jobsFile, JSON.stringify(jobs));
  const start = () =>
    spawn(process.execPath, [script, folder, jobsFile, draftFile], { stdio: ['ignore', 'pipe', 'inherit'] });
  return { folder, start };
}

const ended = (child: ChildProcess) =>
  new Promise<number | null>((resolve) => {
    if (child.exitCode !== null || child.signalCode !== null) resolve(child.exitCode);
    else child.on('exit', resolve);
  });
const issued = (child: ChildProcess, count: number) =>
  new Promise<void>((resolve) => {
    let seen = 0;
    child.on('exit', () => resolve());
    child.stdout?.on('data', (text) => {
      seen += String(text).split('\n').length - 1;
      if (seen >= count) resolve();
    });
  });
const pause = (milliseconds: number) => new Promise((resolve) => setTimeout(resolve, milliseconds));

function expectEveryJobOnce(folder: string, jobs: readonly string[]): void {
  const book = openBook(folder);
  const issued = readLedger(book).filter((entry) => entry.event === 'issued');
  expect(issued.map((entry) => entry.number)).toEqual(
    jobs.map((_, place) => `INV-${String(place + 1).padStart(4, '0')}`),
  );
  expect(issued.flatMap((entry) => entry.jobs).sort()).toEqual([...jobs].sort());
  expect(verifyBook(book)).toEqual([]);
}

test('two processes billing the same 200 jobs give each job one invoice, with no number skipped or given twice', async () => {
  const jobs = jobNames(200);
  const { folder, start } = bookWithJobs(jobs);
  expect(await Promise.all([start(), start()].map(ended))).toEqual([0, 0]);
  expectEveryJobOnce(folder, jobs);
}, 120_000);

test('after kill -9 at random moments the next run finishes what was begun, with no number skipped or given twice', async () => {
  const jobs = jobNames(200);
  const { folder, start } = bookWithJobs(jobs);
  let seed = 20_261_124;
  const random = () => {
    seed = (seed * 1_103_515_245 + 12_345) % 2_147_483_648;
    return seed / 2_147_483_648;
  };
  const kills = 12;
  const killed = async () => {
    for (let turn = 0; turn < kills / 2; turn += 1) {
      const child = start();
      await issued(child, 1 + Math.floor(random() * 7));
      await pause(random() * 30);
      child.kill('SIGKILL');
      await ended(child);
    }
  };
  await Promise.all([killed(), killed()]);
  const before = readLedger(openBook(folder)).length;
  expect(before).toBeGreaterThan(0);
  expect(before).toBeLessThan(jobs.length);
  expect(await ended(start())).toBe(0);
  expectEveryJobOnce(folder, jobs);
  expect(readdirSync(folder).filter((name) => name.includes('temporary') || name.includes('lock'))).toEqual([]);
  expect(existsSync(path.join(folder, 'issued/unfinished'))).toBe(false);
}, 120_000);
