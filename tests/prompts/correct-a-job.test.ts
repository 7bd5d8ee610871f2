import { cpSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { runKeyout } from '../end-to-end/run-keyout.ts';
import { type Typed, typeInto } from './typist.ts';

const job = '2026-11-24-KX4D';
const folder = mkdtempSync(path.join(tmpdir(), 'keyout-correct-'));
const samples = path.resolve(import.meta.dirname, '../../sample-jobs');
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function newBook(name: string) {
  const book = path.join(folder, name);
  cpSync(samples, book, { recursive: true });
  const read = () => JSON.parse(readFileSync(path.join(book, 'jobs/2026', `${job}.json`), 'utf8'));
  const shared = ['--book', book, '--today', '2026-11-24'];
  const type = (words: readonly string[], script: readonly (readonly [string, string])[]) =>
    typeInto(
      ['fit', job, ...words, ...shared],
      script.map(([begins, text]): Typed => ({ begins, text })),
      { folder },
    );
  return { read, type, run: (...words: string[]) => runKeyout([...words, ...shared], folder) };
}

const ground: readonly (readonly [string, string])[] = [
  ['The ground point is a', 'chassis bolt'],
  ['Where is it?', 'left strut tower'],
];

describe('a job that is recorded', () => {
  test('is corrected in one part, the rest stays as it was, and what follows is said first', async () => {
    const { read, type, run } = newBook('kept');
    const before = read();
    expect(run('handover', job).exitCode).toBe(0);
    expect(run('bill', job).exitCode).toBe(0);
    const sitting = await type(['ground-point'], [...ground, ['Keep the change?', 'yes']]);
    expect(sitting.unused).toEqual([]);
    const after = read();
    expect(after.ground).toMatchObject({ kind: 'chassis bolt', where: 'left strut tower' });
    const { ground: _before, interview: _asked, ...restBefore } = before;
    const { ground: _after, interview: _again, ...restAfter } = after;
    for (const part of ['vehicle', 'supply', 'probePoints', 'connections', 'device', 'placement', 'labour', 'parts'])
      expect(restAfter[part], part).toMatchObject(restBefore[part]);
    const said = sitting.screen.replaceAll(/\s+/g, ' ');
    expect(said).toContain('hand it over again');
    expect(said).toContain('INV-0001 is issued');
    expect(said.indexOf('INV-0001 is issued')).toBeLessThan(said.indexOf('Keep the change?'));
  });

  test('is told of no sheet to hand over again where the sheet does not change', async () => {
    const { type, run } = newBook('time');
    expect(run('handover', job).exitCode).toBe(0);
    const sitting = await type(
      ['ended'],
      [
        ['Work ended at', '11:00'],
        ['Keep the change?', 'yes'],
      ],
    );
    expect(sitting.unused).toEqual([]);
    expect(sitting.screen.replaceAll(/\s+/g, ' ')).not.toContain('hand it over again');
  });

  test('stays as it is without a typed yes, and when the correction is broken off', async () => {
    const { read, type } = newBook('left');
    const before = read();
    await type(['ground-point'], [...ground, ['Keep the change?', 'no']]);
    expect(read()).toEqual(before);
    const stopped = await typeInto(
      ['fit', job, 'wire-1', '--book', path.join(folder, 'left'), '--today', '2026-11-24'],
      [{ begins: 'Wire 1: colour', text: 'green' }],
      { folder, stopAt: 'Connector or place', stopWith: 'ctrl-c' },
    );
    expect(stopped.exitCode).toBe(130);
    expect(read()).toEqual(before);
  });

  test('has a wire read anew in its own place, and a part it does not have is refused by name', async () => {
    const { read, type, run } = newBook('wire');
    const [first, ...others] = read().probePoints;
    const sitting = await type(
      ['wire-1'],
      [
        ['Wire 1: colour', 'red/green'],
        ['Wire 1: its name', 'P1'],
        ['Connector or place', 'X2 / 4'],
        ['Volts of P1', 'out 12.5@800, on 12.3, crank 10.3, running 14.0'],
        ['Keep the change?', 'yes'],
      ],
    );
    expect(sitting.unused).toEqual([]);
    const points = read().probePoints;
    expect(points.map((point: { name: string }) => point.name)).toEqual(
      [first, ...others].map((point: { name: string }) => point.name),
    );
    expect(points[0]).toMatchObject({ colour: 'red', stripe: 'green', connector: 'X2', pin: '4', verdict: 'constant' });
    expect(points.slice(1)).toMatchObject(others);
    const refused = run('fit', job, 'ashtray');
    expect(refused.exitCode).toBe(2);
  });
});
