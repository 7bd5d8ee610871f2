import { cpSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { ListedJob } from '../../src/operations/listed-jobs.ts';
import { readJob, writeJob } from '../../src/storage/jobs.ts';
import { openBook } from '../../src/storage/open-book.ts';
import { callKeyout } from '../end-to-end/call-keyout.ts';

const folder = mkdtempSync(path.join(tmpdir(), 'keyout-jobs-'));
const day = ['--book', folder, '--today', '2026-11-24'];
beforeAll(() => cpSync(path.resolve(import.meta.dirname, '../../sample-jobs'), folder, { recursive: true }));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

async function listed(...words: string[]): Promise<readonly ListedJob[]> {
  const { exitCode, out } = await callKeyout(['jobs', ...words, '--json', ...day]);
  expect(exitCode).toBe(0);
  return (JSON.parse(out) as { jobs: readonly ListedJob[] }).jobs;
}
const of = async (job: string) => (await listed()).find((each) => each.job === job);

describe('keyout jobs', () => {
  test('follows a job from its record to its payment, and says what is open each time', async () => {
    const van = '2026-11-24-KX4D';
    expect(await of(van)).toMatchObject({ state: 'recorded', invoice: null });
    expect((await of(van))?.open).toContain('not handed over');
    await callKeyout(['handover', van, ...day]);
    expect(['handed over', 'signed']).toContain((await of(van))?.state);
    expect((await of(van))?.open).toContain('unbilled');
    await callKeyout(['bill', van, ...day]);
    expect(await of(van)).toMatchObject({ state: 'billed', invoice: 'INV-0001' });
    expect((await of(van))?.open).toContain('unpaid');
    const owed = JSON.parse((await callKeyout(['owed', '--json', ...day])).out);
    const amount = owed.balances[0].open[0].balanceMinorUnits;
    await callKeyout([
      'paid',
      'INV-0001',
      '--amount',
      (amount / 100).toFixed(2),
      '--method',
      'bank transfer',
      '--day',
      '2026-11-24',
      ...day,
    ]);
    expect(await of(van)).toMatchObject({ state: 'paid', invoice: 'INV-0001' });
  });

  test('a job that lacks most of its record is begun; an invoice credited whole leaves its job unbilled', async () => {
    const book = openBook(folder);
    const { probePoints: _points, connections: _made, ...less } = readJob(book, '2026-11-24-M2WB');
    writeJob(book, { ...less, id: '2026-11-25-AAAA', day: '2026-11-25' });
    expect(await of('2026-11-25-AAAA')).toMatchObject({ state: 'begun' });
    const hybrid = '2026-11-24-M2WB';
    await callKeyout(['handover', hybrid, ...day]);
    await callKeyout(['bill', hybrid, ...day]);
    const number = (await of(hybrid))?.invoice ?? '';
    expect(number).toMatch(/^INV-/);
    await callKeyout(['credit', number, '--because', 'wrong payer', '--no-input', ...day]);
    expect(await of(hybrid)).toMatchObject({ invoice: null });
    expect((await of(hybrid))?.open).toContain('unbilled');
  });

  test('takes a day, a span with or without ends, and nothing else', async () => {
    const days = async (...words: string[]) => [...new Set((await listed(...words)).map((each) => each.day))];
    expect(await days('2026-11-25')).toEqual(['2026-11-25']);
    expect(await days('2026-11-24..2026-11-24')).toEqual(['2026-11-24']);
    expect(await days('..2026-11-24')).toEqual(['2026-11-24']);
    expect(await days('2026-11-25..')).toEqual(['2026-11-25']);
    expect(await days()).toEqual(['2026-11-24', '2026-11-25']);
    expect(await days('2027-01-01')).toEqual([]);
    for (const wrong of ['yesterday', '2026-02-30', '..', '2026-11-25..2026-11-24'])
      expect((await callKeyout(['jobs', wrong, ...day])).exitCode).toBe(2);
    expect((await callKeyout(['jobs', '2027-01-01', ...day])).out).toBe('There is no job there.\n');
    expect((await callKeyout(['jobs', ...day])).out).toMatch(/2026-11-24-KX4D +paid +INV-0001 {2}\S.*: /);
  });
});
