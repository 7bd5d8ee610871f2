import { expect, test } from 'vitest';
import { identifyWires } from '../../src/evidence/identify-wires.ts';
import { type JobInput, job } from '../../src/records/job.ts';

type Readings = NonNullable<NonNullable<JobInput['probePoints']>[number]['readings']>;

// common practice, no source: a ground is proven against a known constant, or by a small drop while current flows
function roleOfGround(ground: Readings, constant: Readings): string {
  const record = job.parse({
    schema: 'keyout-job-1',
    id: '2026-01-01-AAAA',
    day: '2026-01-01',
    supply: [
      { key: 'out', volts: 12.6 },
      { key: 'on', volts: 12.4 },
    ],
    probePoints: [
      { name: 'P1', readings: constant },
      { name: 'G1', readings: ground },
    ],
  });
  const conclusion = identifyWires(record, []).wires[1]?.conclusion;
  return conclusion?.kind === 'concluded' ? conclusion.role : 'open';
}

const proven: Readings = [
  { key: 'out', volts: 12.6, secondsWaited: 720 },
  { key: 'on', volts: 12.4 },
];
const reversed: Readings = [{ key: 'on', volts: -12.4, reference: 'probe point', referencePoint: 'P1' }];

test.each<[string, Readings, Readings, string]>([
  ['against a proven constant', reversed, proven, 'ground'],
  ['against a wire that was not read', reversed, [], 'open'],
  [
    'against a constant read too soon after key out',
    reversed,
    [
      { key: 'out', volts: 12.6, secondsWaited: 30 },
      { key: 'on', volts: 12.4 },
    ],
    'open',
  ],
  [
    '20 mV while 85 mA flow',
    [{ key: 'on', volts: 0.02, reference: 'battery negative', loaded: true, loadMilliamps: 85, taken: 'after' }],
    proven,
    'ground',
  ],
  [
    '20 mV with no current recorded',
    [{ key: 'on', volts: 0.02, reference: 'battery negative', loaded: true, taken: 'after' }],
    proven,
    'open',
  ],
  [
    'a reversed reading taken after connecting',
    [{ ...reversed[0], key: 'on', volts: -12.4, taken: 'after' }],
    proven,
    'open',
  ],
])('a ground read %s', (_, ground, constant, role) => {
  expect(roleOfGround(ground, constant)).toBe(role);
});
