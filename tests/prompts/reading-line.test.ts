import { describe, expect, test } from 'vitest';
import { parseReadingLine } from '../../src/prompts/reading-line.ts';

describe('a typed line of readings', () => {
  test.each([
    ['out 12.6@720', [{ key: 'out', volts: 12.6, secondsWaited: 720, loaded: false, reversed: false }]],
    [
      'acc 0, on 12.4',
      [
        { key: 'accessory', volts: 0, secondsWaited: null, loaded: false, reversed: false },
        { key: 'on', volts: 12.4, secondsWaited: null, loaded: false, reversed: false },
      ],
    ],
    ['run 14.05 loaded', [{ key: 'running', volts: 14.05, secondsWaited: null, loaded: true, reversed: false }]],
    ['run -14.1 reversed', [{ key: 'running', volts: -14.1, secondsWaited: null, loaded: false, reversed: true }]],
  ])('%s', (text, expected) => {
    expect(parseReadingLine(text)).toEqual(expected);
  });

  test.each([
    ['o 12.6', /no key position/],
    ['on', /not understood/],
    ['on 124', /out of range/],
    ['', /at least one/],
  ])('"%s" is refused with a sentence', (text, sentence) => {
    expect(parseReadingLine(text)).toMatch(sentence);
  });
});
