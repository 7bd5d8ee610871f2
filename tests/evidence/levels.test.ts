import { describe, expect, test } from 'vitest';
import { agreedLevels } from '../../src/evidence/levels-at.ts';
import { meterUncertaintyMillivolts } from '../../src/evidence/meter-uncertainty.ts';
import {
  type MeasuredLevel,
  measuredLevels,
  supplyByPosition,
  supplyDisagrees,
  supplyFrom,
  supplyRange,
} from '../../src/evidence/supply-level.ts';
import { type JobInput, job } from '../../src/records/job.ts';
import { systemFrom } from '../../src/records/nominal-volts.ts';
import { type SupplyReading, supplyReading } from '../../src/records/reading.ts';
import { type KeyPosition, keyPositions } from '../../src/records/wire-role.ts';
import { terminalSpeech } from '../../src/words/terminal-speech.ts';

const meter = (accuracyPercent: number, accuracyDigits: number, ranges: readonly (readonly [number, number])[]) => ({
  id: 'm',
  name: 'M',
  accuracyPercent,
  accuracyDigits,
  ranges: ranges.map(([toVolts, digitVolts]) => ({ toVolts, digitVolts })),
  inputMegohms: 10,
});
const exact = meter(0, 0, [[60, 0.01]]);
const jobOf = (input: Partial<JobInput>) =>
  job.parse({ schema: 'keyout-job-1', id: '2026-01-01-AAAA', day: '2026-01-01', ...input });
const supply = (...read: readonly (readonly [KeyPosition, number])[]) =>
  supplyFrom(read.map(([key, volts]): SupplyReading => supplyReading.parse({ key, volts })));

describe('how far a reading may be off: ± percent of reading + digits, as meters are specified', () => {
  test.each<[number, ReturnType<typeof meter> | null, number]>([
    // 12.40 V at ±0.5 % and two digits of 10 mV: 62 + 20
    [12_400, null, 82],
    [-12_400, null, 82],
    [0, null, 20],
    [24_800, null, 144],
    [12_400, meter(0.5, 2, [[60, 0.01]]), 82],
    // exact to the microvolt: 62.25 + 20
    [12_450, null, 82.25],
    [11_241, null, 76.205],
    // a 2000-count meter: 20 V in steps of 10 mV, 200 V in steps of 100 mV
    [
      12_400,
      meter(0.8, 1, [
        [20, 0.01],
        [200, 0.1],
      ]),
      109.2,
    ],
    [
      20_000,
      meter(0.8, 1, [
        [20, 0.01],
        [200, 0.1],
      ]),
      170,
    ],
    [
      24_800,
      meter(0.8, 1, [
        [20, 0.01],
        [200, 0.1],
      ]),
      298.4,
    ],
    // ranges may stand in any order
    [
      12_400,
      meter(0.8, 1, [
        [200, 0.1],
        [20, 0.01],
      ]),
      109.2,
    ],
    // beyond the last range its digit still counts
    [
      30_000,
      meter(1, 3, [
        [6, 0.001],
        [20, 0.01],
      ]),
      330,
    ],
    [10_000, meter(0, 0, [[60, 0.01]]), 0],
    [1000, meter(0, 7, [[6, 0.001]]), 7],
  ])('%s mV is off by up to', (millivolts, profile, expected) => {
    expect(meterUncertaintyMillivolts(millivolts, profile)).toBe(expected);
  });
});

describe('the supply in each key position', () => {
  const at = (key: KeyPosition, read: ReturnType<typeof supply>, system: 12 | 24 = 12) => {
    const { lowest, highest, measured } = supplyRange(key, read, system, () => exact);
    return [lowest, highest, measured];
  };
  test('is the mean of what was read before connecting', () => {
    const record = jobOf({
      supply: [
        { key: 'on', volts: 12.4 },
        { key: 'on', volts: 12.5 },
        { key: 'out', volts: 12.6 },
        { key: 'on', volts: 9, taken: 'after' },
      ],
    });
    expect(supplyByPosition(record).on?.millivolts).toBe(12_450);
    expect(supplyByPosition(record).on?.from).toHaveLength(2);
    expect(Object.keys(supplyByPosition(record))).toEqual(['on', 'out']);
    expect(supplyByPosition(jobOf({}))).toEqual({});
  });

  test('leaves a circuit 0.7 V to lose and 0.3 V for the moment between two readings', () => {
    expect(at('on', supply(['on', 12.4]))).toEqual([11_700, 12_700, true]);
    expect(at('out', supply(['out', 12.6], ['out', 12.5]))).toEqual([11_800, 12_900, true]);
    expect(at('on', supply(['on', 24.8]), 24)).toEqual([23_400, 25_400, true]);
  });

  test('moves up to 15.0 V while charging, and further only if the supply itself did', () => {
    expect(at('running', supply(['running', 12.7]))).toEqual([12_000, 15_000, true]);
    expect(at('running', supply(['running', 15.2]))).toEqual([14_500, 15_500, true]);
    expect(at('running', supply(['running', 28.2]), 24)).toEqual([26_800, 30_000, true]);
    expect(at('running', supply(['running', 14.4], ['running', 12.7]))).toEqual([12_000, 15_000, true]);
  });

  test('dips while cranking, never the same twice', () => {
    expect(at('crank', supply(['crank', 10.4]))).toEqual([8400, 12_400, true]);
    expect(at('crank', supply(['crank', 3.6]))).toEqual([1800, 5600, true]);
    expect(at('crank', supply(['crank', 20.8]), 24)).toEqual([16_800, 24_800, true]);
  });

  test('is only an order of size where it was not measured, or contradicts itself', () => {
    expect(keyPositions.map((key) => at(key, {}))).toEqual([
      [11_000, 14_300, false],
      [11_000, 14_300, false],
      [11_000, 14_300, false],
      [11_000, 14_300, false],
      [6000, 13_000, false],
      [12_300, 15_600, false],
    ]);
    expect(at('on', {}, 24)).toEqual([22_000, 28_600, false]);
    expect(at('on', supply(['on', 12.4], ['on', 6.2]))).toEqual([11_000, 14_300, false]);
  });

  test('is as unsure as the worst of its readings', () => {
    const rough = (reading: SupplyReading) => meter(0, reading.volts > 12.45 ? 5 : 1, [[60, 0.01]]);
    expect(supplyRange('on', supply(['on', 12.4], ['on', 12.5]), 12, rough).unsure).toBe(50);
    expect(supplyRange('on', {}, 12, rough).unsure).toBe(0);
  });

  test.each<[KeyPosition, readonly number[], 12 | 24, boolean]>([
    ['on', [12.4, 11.4], 12, false],
    ['on', [12.4, 11.39], 12, true],
    ['on', [24.8, 22.8], 24, false],
    ['on', [24.8, 22.79], 24, true],
    ['running', [14.8, 12.4], 12, false],
    ['running', [15, 11.99], 12, true],
    ['crank', [10.4, 7.4], 12, false],
    ['crank', [10.4, 7.39], 12, true],
  ])('read %s as %j on %s V contradicts itself: %s+', (key, volts, system, expected) => {
    const read = volts.map((each) => supplyReading.parse({ key, volts: each }));
    expect(supplyDisagrees(key, read, system)).toBe(expected);
  });
});

describe('12 V or 24 V', () => {
  const fromSupply = (...read: readonly (readonly [KeyPosition, number])[]) =>
    systemFrom(jobOf({ supply: read.map(([key, volts]) => ({ key, volts })) }));
  const fromWires = (...read: readonly (readonly [KeyPosition, number])[]) =>
    systemFrom(jobOf({ probePoints: [{ name: 'P1', readings: read.map(([key, volts]) => ({ key, volts })) }] }));
  test.each<[string, 12 | 24 | null, 12 | 24 | null]>([
    ['a resting 12 V battery', fromSupply(['out', 12.6]), 12],
    ['the limits of 12 V', fromSupply(['out', 9.01], ['running', 16.49]), 12],
    ['at 9.0 V it is not told', fromSupply(['out', 9]), null],
    ['at 16.5 V it is not told', fromSupply(['out', 16.5]), null],
    ['a resting 24 V pair', fromSupply(['out', 25.2]), 24],
    ['the limits of 24 V', fromSupply(['out', 18.01], ['running', 32.99]), 24],
    ['at 18.0 V it is not told', fromSupply(['out', 18]), null],
    ['at 33.0 V it is not told', fromSupply(['out', 33]), null],
    ['12 V and 24 V at once', fromSupply(['out', 12.6], ['on', 24.8]), null],
    ['the crank does not count', fromSupply(['out', 12.6], ['crank', 5]), 12],
    ['nothing but the crank', fromSupply(['crank', 10.4]), null],
    ['nothing read', fromSupply(), null],
    ['a wire at 12.4 V', fromWires(['on', 12.4], ['out', 0]), 12],
    ['a wire at 24.8 V', fromWires(['on', 24.8], ['out', 0]), 24],
    ['a ground against a live wire', fromWires(['on', -24.8]), 24],
    ['a wire at 9.0 V', fromWires(['on', 9]), null],
    ['a wire at 9.01 V', fromWires(['on', 9.01]), 12],
    ['a wire at 16.5 V', fromWires(['on', 16.5]), null],
    ['a wire at 18.0 V', fromWires(['on', 18]), null],
    ['a wire at 18.01 V', fromWires(['on', 18.01]), 24],
    ['a wire at 33.0 V', fromWires(['on', 33]), null],
    ['a wire that only cranks', fromWires(['crank', 10.4]), null],
    [
      'no supply and a supply read after',
      systemFrom(jobOf({ supply: [{ key: 'on', volts: 12.4, taken: 'after' }] })),
      null,
    ],
  ])('%s', (_, found, expected) => {
    expect(found).toBe(expected);
  });
});

describe('where a reading stands, with a meter that is never wrong', () => {
  const range = supplyRange('on', supply(['on', 12.4]), 12, () => exact);
  test.each<[number, readonly MeasuredLevel[]]>([
    [-12.4, ['negative']],
    [-0.51, ['negative']],
    [-0.49, ['zero']],
    [0, ['zero']],
    [0.49, ['zero']],
    [0.51, ['between']],
    [2.5, ['between']],
    // four fifths of 12.4 V
    [9.91, ['between']],
    [9.93, ['low']],
    [11.69, ['low']],
    [11.71, ['supply']],
    [12.4, ['supply']],
    [12.69, ['supply']],
    [12.71, ['above']],
    [24.8, ['above']],
  ])('%s V', (volts, expected) => {
    expect(measuredLevels(Math.round(volts * 1000), range, 12, exact)).toEqual(expected);
  });
});

describe('where a reading stands when the meter cannot tell: both sides of the limit', () => {
  const range = supplyRange('on', supply(['on', 12.4]), 12, () => null);
  test.each<[number, readonly MeasuredLevel[]]>([
    // at nothing only the reading itself is unsure: 500 mV ± 22.4 mV
    [0.47, ['zero']],
    [0.476, ['zero']],
    [0.477, ['zero']],
    [0.478, ['zero', 'between']],
    [0.48, ['zero', 'between']],
    [0.52, ['zero', 'between']],
    [0.522, ['zero', 'between']],
    [0.523, ['between']],
    [0.524, ['between']],
    [0.53, ['between']],
    [-0.47, ['zero']],
    [-0.5, ['negative', 'zero']],
    [-0.53, ['negative']],
    // at the supply the supply is unsure too: 11.70 V ± 79 mV ± 82 mV
    [11.53, ['low']],
    [11.55, ['low', 'supply']],
    [11.86, ['low', 'supply']],
    [11.87, ['supply']],
    [9.9, ['between', 'low']],
    [12.53, ['supply']],
    [12.6, ['supply', 'above']],
    [12.87, ['above']],
  ])('%s V', (volts, expected) => {
    expect(measuredLevels(Math.round(volts * 1000), range, 12, null)).toEqual(expected);
  });

  test('a limit twice as high on 24 V', () => {
    const twice = supplyRange('on', supply(['on', 24.8]), 24, () => exact);
    expect(measuredLevels(990, twice, 24, exact)).toEqual(['zero']);
    expect(measuredLevels(1010, twice, 24, exact)).toEqual(['between']);
    expect(measuredLevels(19_830, twice, 24, exact)).toEqual(['between']);
    expect(measuredLevels(19_850, twice, 24, exact)).toEqual(['low']);
    expect(measuredLevels(23_410, twice, 24, exact)).toEqual(['supply']);
  });

  test('a deep dip while cranking leaves no room for a lossy feed', () => {
    const dip = supplyRange('crank', supply(['crank', 3.6]), 12, () => exact);
    expect(measuredLevels(1790, dip, 12, exact)).toEqual(['between']);
    expect(measuredLevels(1810, dip, 12, exact)).toEqual(['supply']);
  });
});

describe('what several readings of one thing show', () => {
  test.each<[readonly (readonly MeasuredLevel[])[], readonly MeasuredLevel[]]>([
    [[['zero']], ['zero']],
    [[['zero'], ['zero']], ['zero']],
    [
      [['zero'], ['supply']],
      ['zero', 'supply'],
    ],
    // one that says otherwise is never outvoted
    [
      [['zero'], ['supply'], ['zero']],
      ['zero', 'supply'],
    ],
    [
      [['zero'], ['supply'], ['between']],
      ['zero', 'supply', 'between'],
    ],
    [[['zero', 'between']], ['zero', 'between']],
    [
      [['between'], ['zero', 'between']],
      ['between', 'zero'],
    ],
    [[['between'], ['between'], ['zero', 'between']], ['between']],
    [[], []],
  ])('%j', (readings, expected) => {
    expect(agreedLevels(readings)).toEqual(expected);
  });
});

describe('words for key positions', () => {
  test('by key, by button, and without an engine', () => {
    const words = (vehicle: JobInput['vehicle']) => {
      const speech = terminalSpeech(jobOf({ vehicle }).vehicle);
      return [...keyPositions.map(speech.where), speech.endOfDrive];
    };
    const byKey = ['with the key out', 'with the key off', 'in accessory', 'with the key on', 'while cranking'];
    expect(words({})).toEqual([...byKey, 'with the engine running', 'key out']);
    expect(words({ start: 'key', drive: 'combustion' })).toEqual([...byKey, 'with the engine running', 'key out']);
    expect(words({ drive: 'electric' })).toEqual([...byKey, 'with the vehicle ready', 'key out']);
    expect(words({ start: 'button', drive: 'hybrid' })).toEqual([
      'with the vehicle asleep',
      'with the vehicle switched off',
      'in accessory',
      'with the ignition on',
      'while cranking',
      'with the vehicle ready',
      'locking the vehicle',
    ]);
  });

  test.each([
    [5, '5 s'],
    [119, '119 s'],
    [120, '2 min'],
    [121, '121 s'],
    [720, '12 min'],
    [0, '0 s'],
    [60, '60 s'],
  ])('%s seconds are written %s', (seconds, expected) => {
    expect(terminalSpeech({}).wait(seconds)).toBe(expected);
  });
});
