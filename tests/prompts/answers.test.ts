import { describe, expect, test } from 'vitest';
import { amountOf, celsiusOf } from '../../src/prompts/answers.ts';
import { currencyDigits } from '../../src/quantities/currency-digits.ts';
import { majorText } from '../../src/quantities/major-units.ts';

// degrees Celsius = (degrees Fahrenheit - 32) x 5 / 9 (NIST SP 811, appendix B.9): 32 F is 0 °C, 212 F is 100 °C, -40 F is -40 °C
describe('a temperature as typed is kept in degrees Celsius', () => {
  test.each([
    ['55', 55],
    ['55 C', 55],
    ['55°c', 55],
    ['-25', -25],
    ['−25', -25],
    ['32 F', 0],
    ['212 F', 100],
    ['212f', 100],
    ['-40 F', -40],
    ['131 F', 55],
    ['-13 °F', -25],
    ['98 F', 37],
    ['warm', null],
    ['55 K', null],
    ['', null],
  ])('%j: %s', (text, celsius) => expect(celsiusOf(text)).toBe(celsius));
});

// ISO 4217: dollars have two decimals, yen none, dinars of Kuwait three
describe('an amount as typed is kept in minor units', () => {
  test.each([
    ['145', 'USD', 14_500],
    ['145.5', 'USD', 14_550],
    ['145,50', 'USD', 14_550],
    ['0.07', 'USD', 7],
    ['145.505', 'USD', null],
    ['145', 'JPY', 145],
    ['145.5', 'JPY', null],
    ['1.234', 'KWD', 1234],
    ['-1', 'USD', null],
    ['1e3', 'USD', null],
  ])('%j in %s: %s', (text, currency, minorUnits) => expect(amountOf(text, currency)).toBe(minorUnits));

  test.each([
    [7, 'USD', '0.07'],
    [14_550, 'USD', '145.50'],
    [145, 'JPY', '145'],
    [5, 'KWD', '0.005'],
  ])('and %i of %s reads %s again', (minorUnits, currency, text) => {
    expect(majorText(minorUnits, currencyDigits(currency))).toBe(text);
    expect(amountOf(text, currency)).toBe(minorUnits);
  });
});
