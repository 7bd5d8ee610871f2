import { describe, expect, test } from 'vitest';
import { soundJob } from '../../src/rules/sound-job.ts';
import { viewOf } from './view-of.ts';

type Point = NonNullable<typeof soundJob.probePoints>[number];
const table = (change: (point: Point) => Point) =>
  viewOf({ probePoints: (soundJob.probePoints ?? []).map(change) }).readings.rows.map((row) => [
    row.name,
    row.cells.map((cell) => cell.text),
  ]);

// what a wire was before anything was joined to it is the proof; readings taken after joining check the work
describe('the table of readings', () => {
  const plain = table((point) => point);

  test('shows what was read before joining, wherever readings taken after it stand in the record', () => {
    const takenAfter = (point: Point) =>
      (point.readings ?? []).map((reading) => ({ ...reading, taken: 'after' as const, loaded: false, volts: 7.77 }));
    expect(table((point) => ({ ...point, readings: [...takenAfter(point), ...(point.readings ?? [])] }))).toEqual(
      plain,
    );
    expect(table((point) => ({ ...point, readings: [...(point.readings ?? []), ...takenAfter(point)] }))).toEqual(
      plain,
    );
  });

  test('does not pass off a reading taken after joining as one taken before', () => {
    const only = table((point) => ({
      ...point,
      readings: (point.readings ?? []).map((reading) => ({ ...reading, taken: 'after' as const, loaded: false })),
    }));
    expect(only.map(([name]) => name)).toEqual(plain.map(([name]) => name));
    expect(new Set(only.flatMap(([, cells]) => cells))).toEqual(new Set(['–']));
  });

  test('shows the reading that counts, and names what it supersedes and what else was read', () => {
    const rows = viewOf({
      probePoints: [
        {
          name: 'P1',
          readings: [
            { key: 'out', volts: 12.41, secondsWaited: 30 },
            { key: 'out', volts: 0, secondsWaited: 720 },
            { key: 'accessory', volts: 0 },
            { key: 'on', volts: 12.4 },
            { key: 'on', volts: 12.39, lights: 'on' },
            { key: 'on', volts: 0.1, reference: 'battery positive' },
            { key: 'out', volts: 0, secondsWaited: 900, isolator: 'open' },
            { key: 'crank', volts: 10.3 },
          ],
        },
      ],
    }).readings.rows;
    expect(rows[0]?.cells.map((cell) => cell.text).slice(0, 2)).toEqual(['0.00', '0.00']);
    expect(rows[0]?.note.replaceAll('\u00a0', ' ')).toBe(
      'Superseded: with the key out (12.41 V after 30 s). Also read: with the key on and the lamps on (12.39 V), with the key on against a live wire (0.10 V) and with the key out and the isolator open (0.00 V after 15 min).',
    );
  });
});
