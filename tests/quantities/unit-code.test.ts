import { expect, test } from 'vitest';
import { unitCode } from '../../src/quantities/unit-code.ts';
import { invoiceLine } from '../../src/records/issued-invoice.ts';

// Source: UN/ECE Recommendation No. 20, common codes with their names
const names: Readonly<Record<string, string>> = {
  EA: 'each',
  HUR: 'hour',
  MIN: 'minute [unit of time]',
  DAY: 'day',
  SMI: 'mile (statute mile)',
  KMT: 'kilometre',
  MTR: 'metre',
  FOT: 'foot',
  SET: 'set',
  C62: 'one',
};

test('every unit that a line may have has its code of UN/ECE Recommendation 20', () => {
  expect(invoiceLine.shape.unit.options.map((unit) => [unit, names[unitCode(unit)]])).toEqual([
    ['each', 'each'],
    ['hour', 'hour'],
    ['minute', 'minute [unit of time]'],
    ['day', 'day'],
    ['mi', 'mile (statute mile)'],
    ['km', 'kilometre'],
    ['metre', 'metre'],
    ['foot', 'foot'],
    ['set', 'set'],
    ['visit', 'one'],
  ]);
});
