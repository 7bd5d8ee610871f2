import { expect, test } from 'vitest';
import { identifyWires } from '../../src/evidence/identify-wires.ts';
import { terminalSpeech } from '../../src/words/terminal-speech.ts';
import { jobOfLine, readMatrix } from './read-matrix.ts';

test.each(['twelve-volt-wires', 'other-vehicles', 'several-wires', 'hard-yards'])(
  'every sentence that the lines of %s draw is the one that was read and accepted',
  async (file) => {
    const said = readMatrix(`${file}.txt`).flatMap((line) => {
      const job = jobOfLine(line);
      const { wires, traps } = identifyWires(job, []);
      const speech = terminalSpeech(job.vehicle);
      return [
        line.text,
        ...wires.flatMap((wire) => [
          `    ${speech.wire(wire)}`,
          ...wire.traps.map((trap) => `    mind: ${speech.trap(trap)}`),
          ...(wire.conclusion.kind === 'open' && wire.conclusion.wants !== null
            ? [`    next: ${speech.wanted(wire.conclusion.wants)}`]
            : []),
        ]),
        ...traps.map((trap) => `    mind: ${speech.trap(trap)}`),
        '',
      ];
    });
    await expect(said.join('\n')).toMatchFileSnapshot(`golden/${file}.txt`);
  },
);
