import { cpSync, existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { runKeyout } from './run-keyout.ts';

const folder = mkdtempSync(path.join(tmpdir(), 'keyout-travel-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const job = '2026-11-24-KX4D';
const tripFile = 'trips/2026-11-24.json';

function newBook(name: string): string {
  const book = path.join(folder, name);
  cpSync(path.resolve(import.meta.dirname, '../../sample-jobs'), book, { recursive: true });
  return book;
}
const bill = (book: string) => runKeyout(['bill', job, '--book', book, '--today', '2026-11-24'], folder);

describe('travel is never forgotten in silence', () => {
  test('a job of a trip that is not recorded is not billed, and the file is named', () => {
    const book = newBook('none');
    rmSync(path.join(book, tripFile));
    const result = bill(book);
    expect(result.exitCode).toBe(3);
    expect(result.err).toContain(tripFile);
    expect(result.err).toContain('keyout day 2026-11-24');
    expect(existsSync(path.join(book, 'issued'))).toBe(false);
  });

  test('a job that its trip does not list is not billed', () => {
    const book = newBook('unlisted');
    const trip = JSON.parse(readFileSync(path.join(book, tripFile), 'utf8'));
    const jobs = trip.jobs.filter((each: { job: string }) => each.job !== job);
    writeFileSync(path.join(book, tripFile), JSON.stringify({ ...trip, jobs }));
    const result = bill(book);
    expect(result.exitCode).toBe(3);
    expect(result.err).toContain(`does not list ${job}`);
    expect(existsSync(path.join(book, 'issued'))).toBe(false);
  });

  test('at the end of the day, a job that cannot be priced says why, and the others are billed', () => {
    const book = newBook('unpriced');
    const file = path.join(book, 'jobs/2026', `${job}.json`);
    const record = JSON.parse(readFileSync(file, 'utf8'));
    writeFileSync(file, JSON.stringify({ ...record, parts: [{ what: 'Bracket', quantity: '1' }] }));
    const result = runKeyout(['day', '2026-11-24', '--book', book, '--today', '2026-11-24'], folder);
    expect(result.exitCode).toBe(1);
    expect(result.out).toContain('unbilled: "Bracket" has no price');
    expect(result.out).toContain(`${job}, parts[1].unitCostMinorUnits`);
    expect(result.out.match(/invoice {2}INV-\d+/g)).toHaveLength(3);
  });
});
