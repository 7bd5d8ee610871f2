import { describe, expect, test } from 'vitest';
import { identifyWires } from '../../src/evidence/identify-wires.ts';
import { jobOfLine, readMatrix, saidOf } from './read-matrix.ts';

const lines = [
  'twelve-volt-wires.txt',
  'other-vehicles.txt',
  'several-wires.txt',
  'meter-limits.txt',
  'hard-yards.txt',
].flatMap(readMatrix);

describe('what a fitter concludes from a line of readings, and is warned of', () => {
  test.each(lines.map((line) => [`${line.file}:${line.number} ${line.text}`, line] as const))('%s', (_, line) => {
    const said = saidOf(identifyWires(jobOfLine(line), []), true);
    expect(said).toEqual({ concluded: line.concluded, traps: line.traps });
  });

  test('there are at least 120 lines, and at least 30 of them hold a trap', () => {
    expect(lines.length).toBeGreaterThanOrEqual(120);
    expect(lines.filter((line) => line.traps.length > 0).length).toBeGreaterThanOrEqual(30);
  });
});
