import { describe, expect, test } from 'vitest';
import { parseReadingLine } from '../../src/prompts/reading-line.ts';

const plain = {
  secondsWaited: null,
  loaded: false,
  loadMilliamps: null,
  reversed: false,
  toNegative: false,
  steady: true,
};

describe('a typed line of readings', () => {
  test.each([
    ['out 12.6@720', [{ ...plain, key: 'out', volts: 12.6, secondsWaited: 720 }]],
    [
      'acc 0, on 12.4',
      [
        { ...plain, key: 'accessory', volts: 0 },
        { ...plain, key: 'on', volts: 12.4 },
      ],
    ],
    ['run 14.05 loaded', [{ ...plain, key: 'running', volts: 14.05, loaded: true }]],
    ['r 14.05 85mA', [{ ...plain, key: 'running', volts: 14.05, loaded: true, loadMilliamps: 85 }]],
    ['run -14.1 reversed', [{ ...plain, key: 'running', volts: -14.1, reversed: true }]],
    [
      'r 0.02 85 mA to negative',
      [{ ...plain, key: 'running', volts: 0.02, loaded: true, loadMilliamps: 85, toNegative: true }],
    ],
    ['on 2.5 unsteady', [{ ...plain, key: 'on', volts: 2.5, steady: false }]],
  ])('%s', (text, expected) => {
    expect(parseReadingLine(text)).toEqual(expected);
  });

  test('bare volts stand in the order of the supply’s key positions, a hyphen where none was taken', () => {
    expect(parseReadingLine('12.57@720 - 12.4', ['out', 'accessory', 'on', 'crank'])).toEqual([
      { ...plain, key: 'out', volts: 12.57, secondsWaited: 720 },
      { ...plain, key: 'on', volts: 12.4 },
    ]);
  });

  test('a decimal comma is understood where the locale writes one', () => {
    expect(parseReadingLine('out 12,6@720; on 12,4', [], true)).toEqual([
      { ...plain, key: 'out', volts: 12.6, secondsWaited: 720 },
      { ...plain, key: 'on', volts: 12.4 },
    ]);
  });

  test.each([
    ['o 12.6', /no key position/],
    ['on', /not understood/],
    ['on 124', /out of range/],
    ['', /at least one/],
    ['12.6 12.5', /key position with each/],
  ])('"%s" is refused with a sentence', (text, sentence) => {
    expect(parseReadingLine(text)).toMatch(sentence);
  });

  test('more volts than key positions are refused', () => {
    expect(parseReadingLine('12.6 12.5', ['out'])).toMatch(/2 readings for 1 key positions/);
  });
});
