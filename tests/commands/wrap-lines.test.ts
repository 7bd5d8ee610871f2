import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { displayColumns, wrapLines } from '../../src/commands/wrap-lines.ts';

describe('a message on a terminal', () => {
  test('breaks between words, each part as far in as the first', () => {
    expect(wrapLines('    to do: Ask for the number and record it.', 24)).toBe(
      '    to do: Ask for the\n    number and record\n    it.',
    );
    expect(wrapLines('short\n  also short', 24)).toBe('short\n  also short');
    expect(wrapLines('', 24)).toBe('');
  });

  test('counts what stands on the screen: wide letters twice, marks that sit on a letter not at all', () => {
    expect(['abc', 'é', 'e\u0301', '漢字', '\u200d', '🚚'].map(displayColumns)).toEqual([3, 1, 1, 4, 0, 2]);
  });

  test('loses no word at any width, and no line is longer than the terminal unless it is one word', () => {
    fc.assert(
      fc.property(
        fc.array(fc.stringMatching(/^[a-zé漢]{1,12}$/), { maxLength: 30 }),
        fc.constantFrom(40, 50, 80, 200),
        fc.nat(6),
        (words, columns, indent) => {
          const line = `${' '.repeat(indent)}${words.join(' ')}`;
          const lines = wrapLines(line, columns).split('\n');
          expect(lines.join(' ').split(/ +/).filter(Boolean)).toEqual(words);
          for (const each of lines) expect(displayColumns(each) <= columns || !each.trim().includes(' ')).toBe(true);
        },
      ),
    );
  });
});
