import { describe, expect, test } from 'vitest';
import type { WireEvidence } from '../../src/evidence/evidence.ts';
import { identifyWires } from '../../src/evidence/identify-wires.ts';
import { type JobInput, job } from '../../src/records/job.ts';
import { vehicle as vehicleShape } from '../../src/records/vehicle.ts';
import { terminalSpeech } from '../../src/words/terminal-speech.ts';

type Point = NonNullable<JobInput['probePoints']>[number];
type Vehicle = NonNullable<JobInput['vehicle']>;

const supply = [
  { key: 'out' as const, volts: 12.6 },
  { key: 'on' as const, volts: 12.4 },
  { key: 'crank' as const, volts: 10.4 },
  { key: 'running' as const, volts: 14.1 },
];

function wires(points: readonly Point[], vehicle: Vehicle = {}, read = supply): readonly WireEvidence[] {
  return identifyWires(
    job.parse({
      schema: 'keyout-job-1',
      id: '2026-01-01-AAAA',
      day: '2026-01-01',
      vehicle,
      supply: read,
      probePoints: [...points],
    }),
    [],
  ).wires;
}
const sentence = (readings: Point['readings'], vehicle: Vehicle = {}, point: Partial<Point> = {}) => {
  const wire = wires([{ name: 'P1', ...point, readings }], vehicle)[0];
  return wire === undefined ? undefined : terminalSpeech(vehicleShape.parse(vehicle)).wire(wire);
};

describe('a conclusion is one sentence with its readings', () => {
  test.each<[string, Point['readings'], Vehicle, Partial<Point>, string]>([
    [
      'a constant',
      [
        { key: 'on', volts: 12.4 },
        { key: 'out', volts: 12.57, secondsWaited: 720 },
      ],
      {},
      { colour: 'red', stripe: 'white' },
      'Red with white stripe (P1) is constant (terminal 30): battery volts with the key out (12.57 V after 12 min) and with the key on (12.40 V).',
    ],
    [
      'an ignition feed, loaded afterwards',
      [
        { key: 'out', volts: 0, secondsWaited: 90 },
        { key: 'accessory', volts: 0 },
        { key: 'on', volts: 12.38 },
        { key: 'crank', volts: 10.3 },
        { key: 'running', volts: 14.06 },
        { key: 'running', volts: 14.03, loaded: true, taken: 'after' },
      ],
      {},
      {},
      'The wire (P1) is ignition (terminal 15): dead with the key out (0.00 V after 90 s) and in accessory (0.00 V); battery volts with the key on (12.38 V), while cranking (10.30 V) and with the engine running (14.06 V, 14.03 V loaded).',
    ],
    [
      'a hybrid with a button',
      [
        { key: 'out', volts: 0, secondsWaited: 600 },
        { key: 'accessory', volts: 0 },
        { key: 'on', volts: 12.38 },
        { key: 'running', volts: 14.06 },
      ],
      { drive: 'hybrid', start: 'button' },
      { colour: 'grey' },
      'Grey (P1) is ignition (terminal 15): dead with the vehicle asleep (0.00 V after 10 min) and in accessory (0.00 V); battery volts with the ignition on (12.38 V) and with the vehicle ready (14.06 V).',
    ],
    [
      'a ground',
      [
        { key: 'running', volts: -14.07, reference: 'battery positive' },
        {
          key: 'running',
          volts: 0.02,
          reference: 'battery negative',
          loaded: true,
          loadMilliamps: 85,
          taken: 'after',
        },
      ],
      {},
      { colour: 'black' },
      'Black (P1) is ground (terminal 31): -14.07 V against a live wire with the engine running and 0.02 V of drop at 85 mA with the engine running.',
    ],
    [
      'a lamp feed',
      [
        { key: 'on', volts: 0 },
        { key: 'on', volts: 12.2, lights: 'on' },
      ],
      {},
      {},
      'The wire (P1) is lighting (terminal 58): dead with the key on (0.00 V); battery volts with the key on and the lamps on (12.20 V).',
    ],
    [
      'a signal',
      [{ key: 'on', volts: 2.5 }],
      {},
      {},
      'The wire (P1) is a signal: neither battery volts nor nothing with the key on (2.50 V); never splice it.',
    ],
    [
      'one role left, not yet proven',
      [
        { key: 'accessory', volts: 0 },
        { key: 'on', volts: 12.4 },
      ],
      {},
      {},
      'The wire (P1) is not proven yet; so far it reads like ignition.',
    ],
    [
      'two roles left',
      [
        { key: 'accessory', volts: 12.4 },
        { key: 'on', volts: 12.4 },
      ],
      {},
      {},
      'The wire (P1) is not proven; it could still be constant or accessory.',
    ],
    [
      'a dead wire',
      [
        { key: 'on', volts: 0 },
        { key: 'on', volts: 0, lights: 'on' },
        { key: 'crank', volts: 0 },
      ],
      {},
      {},
      'The wire (P1) is not proven; it could still be ground, or lead nowhere.',
    ],
    [
      'a feed that loses too much with the engine running',
      [
        { key: 'out', volts: 0, secondsWaited: 720 },
        { key: 'on', volts: 12.4 },
        { key: 'running', volts: 12.2 },
        { key: 'crank', volts: 0 },
        { key: 'accessory', volts: 0 },
      ],
      {},
      {},
      'The wire (P1) is not proven yet; so far it reads like a signal.',
    ],
    [
      'none of the roles',
      [
        { key: 'out', volts: 0, secondsWaited: 720 },
        { key: 'off', volts: 12.6, secondsWaited: 720 },
        { key: 'running', volts: 14 },
      ],
      {},
      {},
      'The wire (P1) fits none of the roles looked for: dead with the key out (0.00 V after 12 min); battery volts with the key off (12.60 V after 12 min) and with the engine running (14.00 V).',
    ],
  ])('%s', (_, readings, vehicle, point, expected) => {
    expect(sentence(readings, vehicle, point)).toBe(expected);
  });
});

describe('the advice says what to do in the words of the vehicle', () => {
  const advice = (readings: Point['readings'], vehicle: Vehicle = {}, point: Partial<Point> = {}) => {
    const conclusion = wires([{ name: 'P1', ...point, readings }], vehicle)[0]?.conclusion;
    if (conclusion?.kind !== 'open') return 'concluded';
    return conclusion.wants === null ? null : terminalSpeech(vehicleShape.parse(vehicle)).wanted(conclusion.wants);
  };
  const on = [{ key: 'on' as const, volts: 12.4 }];
  const switched = [{ key: 'accessory' as const, volts: 12.4 }, ...on];
  test.each<[string, Point['readings'], Vehicle, Partial<Point>, string | null]>([
    [
      'nothing read yet',
      [],
      {},
      {},
      'Read P1 with the key on, black lead on the chassis (about 3.1 of 7 possible roles would remain).',
    ],
    [
      'live with the key on',
      on,
      {},
      {},
      'Read P1 in accessory, black lead on the chassis (about 1.7 of 3 possible roles would remain).',
    ],
    [
      'live in accessory too',
      switched,
      {},
      {},
      'Read P1 with the key out, black lead on the chassis, 10 minutes after key out (about 1.0 of 2 possible roles would remain).',
    ],
    [
      'the same with a button',
      switched,
      { start: 'button' },
      {},
      'Read P1 with the vehicle asleep, black lead on the chassis, 10 minutes after locking the vehicle (about 1.0 of 2 possible roles would remain).',
    ],
    [
      'the same with an isolator',
      switched,
      { batteryIsolator: true },
      {},
      'Read P1 with the key out, black lead on the chassis, 10 minutes after key out, isolator closed (about 1.0 of 2 possible roles would remain).',
    ],
    [
      'only ignition is left',
      [{ key: 'accessory', volts: 0 }, ...on],
      {},
      {},
      'Read P1 while cranking, black lead on the chassis (to prove that it is ignition).',
    ],
    [
      'dead with the key on',
      [{ key: 'on', volts: 0 }],
      {},
      {},
      'Read P1 with the key on, black lead on the chassis, the lamps switched on (about 2.5 of 4 possible roles would remain).',
    ],
    [
      'ground or nowhere',
      [
        { key: 'on', volts: 0 },
        { key: 'on', volts: 0, lights: 'on' },
        { key: 'crank', volts: 0 },
      ],
      {},
      {},
      'Read P1 with the key on with the black lead on a known constant: a ground shows the supply with a minus sign (about 1.0 of 2 possible roles would remain).',
    ],
    ['a yellow sleeve is not probed', on, {}, { sleeve: 'yellow' }, null],
    ['an orange sleeve is not probed', on, {}, { sleeve: 'orange' }, null],
    [
      'nothing more to learn',
      [
        { key: 'out', volts: 0, secondsWaited: 720 },
        { key: 'accessory', volts: 0 },
        { key: 'on', volts: 12.4 },
        { key: 'crank', volts: 0 },
      ],
      {},
      {},
      null,
    ],
    ['proven', [{ key: 'out', volts: 12.6, secondsWaited: 720 }, ...on], {}, {}, 'concluded'],
  ])('%s', (_, readings, vehicle, point, expected) => {
    expect(advice(readings, vehicle, point)).toBe(expected);
  });
});

describe('the verdict beside the conclusion', () => {
  const constant: Point['readings'] = [
    { key: 'out', volts: 12.6, secondsWaited: 720 },
    { key: 'on', volts: 12.4 },
  ];
  test.each<[string, Point['readings'], Point['verdict'], WireEvidence['agreement']]>([
    ['none given', constant, undefined, 'no verdict'],
    ['the same', constant, 'constant', 'agreement'],
    ['another', constant, 'ignition', 'contradiction'],
    ['still possible', [{ key: 'on', volts: 12.4 }], 'ignition', 'not proven'],
    ['ruled out', [{ key: 'on', volts: 12.4 }], 'ground', 'contradiction'],
    ['"unknown" claims nothing', [{ key: 'on', volts: 12.4 }], 'unknown', 'not proven'],
  ])('%s', (_, readings, verdict, agreement) => {
    expect(wires([{ name: 'P1', readings, verdict }])[0]?.agreement).toBe(agreement);
  });
});
