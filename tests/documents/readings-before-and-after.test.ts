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
});
