import { expect, test } from 'vitest';
import { identifyWires } from '../../src/evidence/identify-wires.ts';
import { jobOfLine, readMatrix } from './read-matrix.ts';

test.each(['twelve-volt-wires', 'other-vehicles', 'several-wires'])(
  'every sentence that the lines of %s draw is the one that was read and accepted',
  async (file) => {
    const said = readMatrix(`${file}.txt`).flatMap((line) => {
      const { wires, traps } = identifyWires(jobOfLine(line), []);
      return [
        line.text,
        ...wires.flatMap((wire) => [
          `    ${wire.sentence}`,
          ...wire.traps.map((trap) => `    mind: ${trap.sentence}`),
          ...(wire.conclusion.kind === 'open' && wire.conclusion.wants !== null
            ? [`    next: ${wire.conclusion.wants.sentence}`]
            : []),
        ]),
        ...traps.map((trap) => `    mind: ${trap.sentence}`),
        '',
      ];
    });
    await expect(said.join('\n')).toMatchFileSnapshot(`golden/${file}.txt`);
  },
);
