import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readMoney } from '../../src/quantities/read-money.ts';

test.each([
  ['1234.5', 'USD', 123450],
  ['1234.50', 'USD', 123450],
  ['1234,50', 'EUR', 123450],
  ['0.05', 'USD', 5],
  ['1200', 'JPY', 1200],
  ['1.234', 'KWD', 1234],
  ['1234.567', 'USD', null],
  ['1,234', 'USD', null],
  ['1,234', 'KWD', null],
  ['1.5', 'JPY', null],
  ['1,234.50', 'USD', null],
  ['-5', 'USD', null],
  ['$5', 'USD', null],
  ['', 'USD', null],
])('"%s" in %s is read as %s', (text, currency, expected) => {
  expect(readMoney(text, currency)).toBe(expected);
});

test('every amount of cents, written with two decimals, is read as itself', () => {
  fc.assert(
    fc.property(fc.nat(1_000_000_000), (cents) => {
      const text = `${Math.trunc(cents / 100)}.${String(cents % 100).padStart(2, '0')}`;
      expect(readMoney(text, 'USD')).toBe(cents);
    }),
  );
});
