import type { Job } from '../records/job.ts';
import { type KeyPosition, keyPositions } from '../records/wire-role.ts';

/** The readings so far as the table that will be printed: the supply first, wires as rows, key positions as columns. */
export function writeReadings(job: Job): readonly string[] {
  const points = job.probePoints ?? [];
  const all = [...(job.supply ?? []), ...points.flatMap((point) => point.readings)];
  const columns = keyPositions.filter((key) => all.some((each) => each.key === key));
  if (columns.length === 0) return [];
  const cell = (readings: readonly { readonly key: KeyPosition; readonly volts: number }[], key: KeyPosition) =>
    readings
      .filter((each) => each.key === key)
      .map((each) => each.volts.toFixed(2))
      .join('/') || '–';
  const rows = [
    ['', ...columns],
    ['supply', ...columns.map((key) => cell(job.supply ?? [], key))],
    ...points.map((point) => [
      [point.name, point.colour, point.stripe].filter((word) => word !== undefined).join(' '),
      ...columns.map((key) => cell(point.readings, key)),
    ]),
  ];
  const widths = rows[0]?.map((_, index) => Math.max(...rows.map((row) => row[index]?.length ?? 0))) ?? [];
  return rows.map((row) =>
    row
      .map((text, index) => (index === 0 ? text.padEnd(widths[index] ?? 0) : text.padStart(widths[index] ?? 0)))
      .join('  '),
  );
}
