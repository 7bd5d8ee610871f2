import fc from 'fast-check';
import { validate } from 'vin-validator';
import { describe, expect, test } from 'vitest';
import { hasLuhnDigit } from '../../src/electrics/luhn.ts';
import { standingDays } from '../../src/electrics/standing-days.ts';
import { vinCheckDigit } from '../../src/electrics/vin.ts';
import { milliohmsPerMetre, squareMillimetres } from '../../src/electrics/wire-resistance.ts';

describe('VIN', () => {
  // 49 CFR 565.15 Table VI; NHTSA outline for new manufacturers p. 18; the third is the often printed example with X
  test.each([
    ['1G4AH59H45G118341', '4'],
    ['1J9RP1A36A1644345', '6'],
    ['1M8GDM9AXKP042788', 'X'],
  ])('%s has check digit %s', (vin, digit) => {
    expect(vinCheckDigit(vin)).toBe(digit);
  });

  test('agrees with an independent package over random VINs', () => {
    const sign = fc.constantFrom(...'ABCDEFGHJKLMNPRSTUVWXYZ0123456789');
    let right = 0;
    fc.assert(
      fc.property(fc.array(sign, { minLength: 17, maxLength: 17 }), (signs) => {
        const vin = signs.join('');
        const corrected = `${vin.slice(0, 8)}${vinCheckDigit(vin)}${vin.slice(9)}`;
        right += validate(corrected) ? 1 : 0;
        expect(validate(corrected)).toBe(true);
        expect(validate(vin)).toBe(vinCheckDigit(vin) === vin[8]);
      }),
      { numRuns: 2000 },
    );
    expect(right).toBe(2000);
  });
});

test('the often printed example IMEI has its Luhn digit, any other last digit has not (3GPP TS 23.003 annex B; example from memory)', () => {
  expect(hasLuhnDigit('490154203237518')).toBe(true);
  for (const digit of '012345679') expect(hasLuhnDigit(`49015420323751${digit}`)).toBe(false);
});

describe('wire', () => {
  // common tables of solid copper at 20 °C, ohm per 1000 ft, computed from ASTM B258 and IACS
  test.each([
    [10, 0.9989],
    [12, 1.588],
    [14, 2.525],
    [16, 4.016],
    [18, 6.385],
    [20, 10.15],
    [22, 16.14],
    [24, 25.67],
  ])('%i AWG has %d ohm per 1000 ft', (awg, ohms) => {
    expect((milliohmsPerMetre({ awg }) * 304.8) / 1000).toBeCloseTo(ohms, ohms > 10 ? 1 : 2);
  });

  test('36 AWG is 0.005 in and 4/0 would be 0.46 in across (ASTM B258)', () => {
    expect(squareMillimetres({ awg: 36 })).toBeCloseTo((Math.PI * 0.127 ** 2) / 4, 6);
  });

  test('copper at 70 °C has (234.5 + 70) / 254.5 of its resistance at 20 °C (AC 43.13-1B chapter 11)', () => {
    expect(milliohmsPerMetre({ awg: 18 }, 70) / milliohmsPerMetre({ awg: 18 })).toBeCloseTo(304.5 / 254.5, 6);
  });

  test('30 Ah usable at 50 mA last 25 days (definition of the ampere hour)', () => {
    expect(standingDays(60, 50)).toBeCloseTo(25, 6);
  });
});
