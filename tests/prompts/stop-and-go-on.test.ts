import { cpSync, existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { runKeyout } from '../end-to-end/run-keyout.ts';
import { readScript, typeInto } from './typist.ts';

const folder = mkdtempSync(path.join(tmpdir(), 'keyout-stop-'));
const samples = path.resolve(import.meta.dirname, '../../sample-jobs');
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const job = '2026-11-24-KX4D';
const van = readScript('van-job.txt');

function bookWithout(name: string): string {
  const book = path.join(folder, name);
  cpSync(samples, book, { recursive: true });
  rmSync(path.join(book, 'jobs/2026', `${job}.json`));
  return book;
}

describe('an interview that is stopped', () => {
  test('by SIGKILL in the middle of a wire goes on at the very prompt, with nothing lost', async () => {
    const book = bookWithout('killed');
    const words = ['fit', job, '--book', book, '--today', '2026-11-24'];
    const first = await typeInto(words, van, { folder, stopAt: 'Volts of P1', stopWith: 'kill' });
    expect(first.signal).toBe(9);
    expect(first.prompts.at(-2)).toMatch(/^Anything special about the wire/);
    const second = await typeInto(words, first.unused, { folder, stopAt: 'Wire 2: colour', stopWith: 'ctrl-c' });
    expect(second.prompts[0]).toMatch(/^Volts of P1/);
    expect(second.exitCode).toBe(130);
    expect(second.screen).toContain('What was answered so far is saved');
    const kept = JSON.parse(readFileSync(path.join(book, 'jobs/2026', `${job}.json`), 'utf8'));
    expect(kept.probePoints).toHaveLength(1);
    expect(kept.probePoints[0]).toMatchObject({ name: 'P1', colour: 'red', stripe: 'white', pin: '1' });
  }, 120_000);
});

describe('set-up typed into a real terminal', () => {
  test('stopped and gone on with makes a book that every command reads', async () => {
    const book = path.join(folder, 'new-book');
    const words = ['setup', '--book', book];
    const first = await typeInto(words, readScript('setup.txt'), { folder, stopAt: 'Paper', stopWith: 'ctrl-c' });
    expect(first.exitCode).toBe(130);
    expect(existsSync(path.join(book, 'book.json'))).toBe(false);
    const second = await typeInto(words, first.unused, { folder });
    expect(second.prompts[0]).toMatch(/^Paper/);
    expect(second.unused).toEqual([]);
    expect(second.exitCode).toBe(0);
    const made = JSON.parse(readFileSync(path.join(book, 'book.json'), 'utf8'));
    expect(made).toMatchObject({
      business: { name: 'Brasswell Fitting', address: { lines: ['4 Wharf Lane', 'Unit 2'], country: 'US' } },
      currency: 'USD',
      timeZone: 'America/Los_Angeles',
      units: { distance: 'mi', length: 'in' },
      tax: { regime: 'sales tax', lines: { default: 'not-taxed', parts: 'sales-tax' } },
      payment: { termsDays: 21 },
    });
    expect(made.tax.codes[0].jurisdictions).toEqual([
      { name: 'State', ratePercent: '6.5' },
      { name: 'County', ratePercent: '2.1' },
    ]);
    const rates = JSON.parse(readFileSync(path.join(book, 'rates.json'), 'utf8'));
    expect(rates.flatRates.map((rate: { priceMinorUnits: number }) => rate.priceMinorUnits)).toEqual([15000, 9550]);
    expect(existsSync(path.join(book, 'payers/hollow-creek-haulage.json'))).toBe(true);
    expect(existsSync(path.join(book, 'setup-unfinished.json'))).toBe(false);
    const day = runKeyout(['day', '2026-11-24', '--book', book], folder);
    expect(day.out).toContain('There is no job on 2026-11-24');
    expect(runKeyout(['verify', '--book', book], folder).exitCode).toBe(0);
  }, 120_000);
});
