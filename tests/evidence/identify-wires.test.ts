import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { identifyWires } from '../../src/evidence/identify-wires.ts';
import { parseReadingLine } from '../../src/prompts/reading-line.ts';
import { type Job, job as jobRecord } from '../../src/records/job.ts';
import type { Reading } from '../../src/records/reading.ts';

const rows = readFileSync(new URL('./twelve-volt-wires.txt', import.meta.url), 'utf8')
  .split('\n')
  .filter((row) => row.trim() !== '' && !row.startsWith('#'))
  .map((row) => {
    const [readings = '', expected = '', drive = 'combustion'] = row.split('|').map((cell) => cell.trim());
    return { readings, expected, drive };
  });

const supply = [
  ['out', 12.6],
  ['accessory', 12.5],
  ['on', 12.4],
  ['crank', 10.4],
  ['running', 14.1],
] as const;

function jobOf(readings: readonly Partial<Reading>[], drive: string, factor = 1): Job {
  return jobRecord.parse({
    schema: 'keyout-job-1',
    id: '2026-01-01-AAAA',
    day: '2026-01-01',
    vehicle: { drive },
    supply: supply.map(([key, volts]) => ({ key, volts: Math.round(volts * factor * 1000) / 1000 })),
    probePoints: [
      {
        name: 'P1',
        readings: readings.map((each) => ({ ...each, volts: Math.round((each.volts ?? 0) * factor * 1000) / 1000 })),
      },
    ],
  });
}

function typed(text: string): readonly Partial<Reading>[] {
  const parsed = parseReadingLine(text);
  if (typeof parsed === 'string') throw new Error(parsed);
  return parsed.map((each) => ({
    key: each.key,
    volts: each.volts,
    loaded: each.loaded,
    ...(each.secondsWaited === null ? {} : { secondsWaited: each.secondsWaited }),
    reference: each.reversed
      ? ('battery positive' as const)
      : each.loaded
        ? ('battery negative' as const)
        : ('chassis' as const),
  }));
}

const conclusionOf = (job: Job) => {
  const conclusion = identifyWires(job, []).wires[0]?.conclusion;
  return conclusion?.kind === 'concluded' ? conclusion.role : 'open';
};

describe('what a fitter would conclude from a line of readings', () => {
  test.each(rows.map((row) => [`${row.readings} | ${row.expected} | ${row.drive}`, row] as const))('%s', (_, row) => {
    expect(conclusionOf(jobOf(typed(row.readings), row.drive))).toBe(row.expected);
  });

  test.each(rows.map((row) => [row.readings, row] as const))(
    'twice the volts on 24 V conclude the same: %s',
    (_, row) => {
      expect(conclusionOf(jobOf(typed(row.readings), row.drive, 2))).toBe(row.expected);
    },
  );

  test('the order of the readings changes nothing', () => {
    fc.assert(
      fc.property(fc.constantFrom(...rows), fc.infiniteStream(fc.nat()), (row, stream) => {
        const keyed = typed(row.readings).map((reading) => ({ reading, sort: stream.next().value ?? 0 }));
        const shuffled = keyed.sort((one, other) => one.sort - other.sort).map((each) => each.reading);
        expect(conclusionOf(jobOf(shuffled, row.drive))).toBe(row.expected);
      }),
    );
  });

  test('an open wire names the reading to take next', () => {
    const wire = identifyWires(jobOf(typed('out 12.6@60, on 12.4'), 'combustion'), []).wires[0];
    expect(wire?.conclusion).toMatchObject({ kind: 'open', wants: { key: 'out', secondsWaited: 600 } });
    expect(wire?.traps.map((trap) => trap.kind)).toContain('retained power');
  });
});
