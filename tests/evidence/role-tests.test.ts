import { expect, test } from 'vitest';
import { identifyWires } from '../../src/evidence/identify-wires.ts';
import { meterProfile } from '../../src/records/book.ts';
import { job } from '../../src/records/job.ts';
import type { Reading } from '../../src/records/reading.ts';
import { sayTest } from '../../src/words/say-test.ts';
import { terminalSpeech } from '../../src/words/terminal-speech.ts';
import { jobOfLine, readMatrix } from './read-matrix.ts';

/** Lines that between them draw every test of every role, with each of its results. */
const chosen = [
  'out 12.6@900, acc 12.5, on 12.4, crank 10.4, run 14.1 | constant',
  'out 0@720, acc 0, on 12.4, crank 10.3, run 14.1 | ignition',
  'out 12.4@120, out 0@720, acc 0, on 12.4',
  'out 0, on 0, run 0, run -14.05 reversed',
  'run 0.02 loaded 85mA after',
  'on 0, on 12.2 lamps | lighting',
  'on 2.5, run 2.5 | signal',
  'out 12.6@720, on 12.4, on 0, on 12.4',
  'out 12.6@720, on 12.4, on 11.2 loaded',
  'on 3.1, on 0 loaded 50mA',
  'on -0.4 reversed',
  'on 0, run 0 | open',
];

const written = (reading: Reading) => `${reading.key} ${reading.volts}${reading.loaded ? ' loaded' : ''}`;

test('the tests of every role, with their results and the readings that decided them', async () => {
  const lines = [...readMatrix('twelve-volt-wires.txt'), ...readMatrix('other-vehicles.txt')];
  const said = chosen.flatMap((start) => {
    const line = lines.find((each) => each.text.startsWith(start));
    if (line === undefined) throw new Error(`no line begins with "${start}"`);
    const job = jobOfLine(line);
    const speech = terminalSpeech(job.vehicle);
    const tests = identifyWires(job, []).wires[0]?.tests ?? [];
    return [
      line.text,
      ...tests.map(
        (each) =>
          `    ${each.role.padEnd(10)}${each.result.padEnd(13)}${each.key ?? '-'}: ${sayTest(each.test, speech)}${each.because.length === 0 ? '' : ` [${each.because.map(written).join(', ')}]`}`,
      ),
      '',
    ];
  });
  await expect(said.join('\n')).toMatchFileSnapshot('golden/role-tests.txt');
});

const rough = meterProfile.parse({
  id: 'rough',
  name: 'Rough',
  accuracyPercent: 3,
  accuracyDigits: 5,
  ranges: [{ toVolts: 60, digitVolts: 0.1 }],
});
const fine = {
  ...rough,
  id: 'fine',
  accuracyPercent: 0.1,
  accuracyDigits: 1,
  ranges: [{ toVolts: 60, digitVolts: 0.001 }],
};

test.each<[string, readonly (typeof rough)[], string | undefined, string | undefined, string]>([
  ['no meter in the book: an ordinary one', [], undefined, undefined, 'constant'],
  ['the first meter of the book, too rough to tell 12.0 V from a lossy feed', [rough], undefined, undefined, 'open'],
  ['the first meter of the book, fine enough', [fine, rough], undefined, undefined, 'constant'],
  ['the wire read with the rough one', [fine, rough], 'rough', undefined, 'open'],
  ['the supply read with the rough one', [fine, rough], undefined, 'rough', 'open'],
  ['a meter that the book does not name: the first', [fine], 'lost', 'lost', 'constant'],
  ['both read with the fine one', [rough, fine], 'fine', 'fine', 'constant'],
])('what can be told depends on the meter: %s', (_, meters, wire, battery, expected) => {
  const withWire = wire === undefined ? {} : { meter: wire };
  const withBattery = battery === undefined ? {} : { meter: battery };
  const record = job.parse({
    schema: 'keyout-job-1',
    id: '2026-01-01-AAAA',
    day: '2026-01-01',
    supply: [
      { key: 'out', volts: 12.6, ...withBattery },
      { key: 'on', volts: 12.4, ...withBattery },
    ],
    probePoints: [
      {
        name: 'P1',
        readings: [
          { key: 'out', volts: 12.2, secondsWaited: 720, ...withWire },
          { key: 'on', volts: 12, ...withWire },
        ],
      },
    ],
  });
  const conclusion = identifyWires(record, meters).wires[0]?.conclusion;
  expect(conclusion?.kind === 'concluded' ? conclusion.role : conclusion?.kind).toBe(expected);
});

test('a constant that stands in for the supply brings its own meter', () => {
  const points = (meter: string) => [
    {
      name: 'P1',
      readings: [
        { key: 'out' as const, volts: 12.6, secondsWaited: 720, meter },
        { key: 'on' as const, volts: 12.4, meter },
      ],
    },
    { name: 'P2', readings: [{ key: 'on' as const, volts: 11.95, meter: 'fine' }] },
  ];
  const levelOf = (meter: string) =>
    identifyWires(
      job.parse({ schema: 'keyout-job-1', id: '2026-01-01-AAAA', day: '2026-01-01', probePoints: points(meter) }),
      [fine, rough],
    ).wires[1]?.tests.find((each) => each.role === 'constant' && each.key === 'on')?.result;
  expect(levelOf('fine')).toBe('passes');
  expect(levelOf('rough')).toBe('not measured');
});

test('a job without wires has no evidence, and nothing to mind', () => {
  const empty = job.parse({ schema: 'keyout-job-1', id: '2026-01-01-AAAA', day: '2026-01-01' });
  expect(identifyWires(empty, [])).toEqual({ systemVolts: null, supply: {}, wires: [], traps: [] });
  const supplied = job.parse({ ...empty, supply: [{ key: 'on', volts: 24.8 }] });
  expect(identifyWires(supplied, [])).toMatchObject({ systemVolts: 24, wires: [], traps: [] });
});
