import { cpSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { typeInto } from './typist.ts';

const folder = mkdtempSync(path.join(tmpdir(), 'keyout-start-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function newBook(name: string): string {
  const book = path.join(folder, name);
  cpSync(path.resolve(import.meta.dirname, '../../sample-jobs'), book, { recursive: true });
  return book;
}

describe('plain keyout', () => {
  test('asks what now and does it', async () => {
    const book = newBook('start');
    const sitting = await typeInto(
      ['--book', book, '--today', '2026-11-24'],
      [
        { begins: 'What now?', text: 'Recall' },
        { begins: 'Maker, model', text: 'haul' },
      ],
      { folder },
    );
    expect(sitting.exitCode).toBe(0);
    expect(sitting.screen).toContain('A hint to prove again with the meter, never a fact.');
    expect(sitting.screen).toContain('2026-11-24-KX4D');
  }, 60_000);

  test('leads to the money in one more step', async () => {
    const book = newBook('money');
    const sitting = await typeInto(
      ['--book', book, '--today', '2026-11-24'],
      [
        { begins: 'What now?', text: 'Money' },
        { begins: 'Money', text: 'Who' },
      ],
      { folder },
    );
    expect(sitting.exitCode).toBe(0);
    expect(sitting.prompts).toHaveLength(2);
  }, 60_000);
});

describe('set-up of a book that exists', () => {
  test('changes one part, offers what is there as the usual answer, and leaves the rest as it was', async () => {
    const book = newBook('change');
    const read = (name: string) => JSON.parse(readFileSync(path.join(book, name), 'utf8'));
    const [before, ratesBefore] = [read('book.json'), read('rates.json')];
    const sitting = await typeInto(
      ['setup', '--book', book],
      [
        { begins: 'Change what?', text: 'rates' },
        { begins: 'Price of an hour’s work', text: '92.50' },
        { begins: 'Change what?', text: 'nothing' },
      ],
      { folder },
    );
    expect(sitting.exitCode).toBe(0);
    expect(sitting.unused).toEqual([]);
    expect(read('book.json')).toEqual(before);
    const rates = read('rates.json');
    expect(rates.hourly[0].priceMinorUnits).toBe(9250);
    const pick = (card: { flatRates: { visit: string; class?: string; priceMinorUnits: number }[] }) =>
      card.flatRates.map((rate) => `${rate.visit} ${rate.class ?? ''} ${rate.priceMinorUnits}`).sort();
    expect(pick(rates)).toEqual(pick(ratesBefore));
    expect(rates.travel[0].pricePerDistanceMinorUnits).toBe(ratesBefore.travel[0].pricePerDistanceMinorUnits);
    expect(rates.surcharges).toHaveLength(ratesBefore.surcharges.length);
    expect(rates.parts).toHaveLength(ratesBefore.parts.length);
  }, 60_000);
});
