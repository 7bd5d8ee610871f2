import fc from 'fast-check';
import { validate } from 'vin-validator';
import { describe, expect, test } from 'vitest';
import { vinCheckDigit } from '../../src/electrics/vin.ts';
import { vinFault } from '../../src/electrics/vin-fault.ts';
import { vinModelYears } from '../../src/electrics/vin-model-year.ts';
import { vinOrigin } from '../../src/electrics/vin-region.ts';

const signs = 'ABCDEFGHJKLMNPRSTUVWXYZ0123456789';
const randomVin = fc.array(fc.constantFrom(...signs), { minLength: 17, maxLength: 17 }).map((each) => each.join(''));
const withDigit = (vin: string, digit: string | null) => `${vin.slice(0, 8)}${digit}${vin.slice(9)}`;

describe('check digit', () => {
  // 49 CFR 565.15 Table VI; NHTSA, Outline for New Manufacturers, p. 18; the rest as printed in public manuals and test suites
  test.each([
    ['1G4AH59H45G118341', '4'],
    ['1J9RP1A36A1644345', '6'],
    ['1M8GDM9AXKP042788', 'X'],
    ['11111111111111111', '1'],
    ['5GZCZ43D13S812715', '1'],
    ['WDBEA30D3HA391172', '3'],
    ['1HGCM82633A004352', '3'],
    ['JM1BN1U70H1100922', '0'],
  ])('%s has check digit %s and no fault', (vin, digit) => {
    expect(vinCheckDigit(vin)).toBe(digit);
    expect(vinFault(vin)).toBeNull();
    expect(validate(vin)).toBe(true);
  });

  // the sample of 49 CFR 565.15 spoilt in one place each; the last two circulate as valid and are not
  test.each([
    ['1G4AH59H45G118331', '1'],
    ['2G4AH59H45G118341', '1'],
    ['1G4AH59H54G118341', '6'],
    ['SGZCZ43D13S812715', 'X'],
    ['WBAEV53443KM18682', '2'],
  ])('%s is caught: the digit should be %s', (vin, expected) => {
    expect(vinFault(vin)).toMatchObject({ kind: 'check digit', expected });
    expect(validate(vin)).toBe(false);
  });

  test('of all 512 single substitutions in the sample of the regulation, exactly the 39 of equal value pass', () => {
    const sample = '1G4AH59H45G118341';
    // Table III: signs that stand for the same number
    const groups = ['1AJ', '2BKS', '3CLT', '4DMU', '5ENV', '6FW', '7GPX', '8HY', '9RZ'];
    let tried = 0;
    const missed: string[] = [];
    for (const [place, old] of [...sample].entries()) {
      for (const sign of place === 8 ? '' : signs.replace(old, '')) {
        tried += 1;
        const spoilt = `${sample.slice(0, place)}${sign}${sample.slice(place + 1)}`;
        if (vinCheckDigit(spoilt) === sample[8]) missed.push(`${old}${sign}`);
      }
    }
    expect(tried).toBe(512);
    expect(missed).toHaveLength(39);
    for (const [one = '', other = ''] of missed)
      expect(groups.some((group) => group.includes(one) && group.includes(other))).toBe(true);
  });

  test('every swap of unequal neighbours that leaves position 9 alone is caught', () => {
    fc.assert(
      fc.property(randomVin, fc.constantFrom(0, 1, 2, 3, 4, 5, 6, 9, 10, 11, 12, 13, 14, 15), (vin, place) => {
        const digit = vinCheckDigit(vin);
        const swapped = `${vin.slice(0, place)}${vin[place + 1]}${vin[place]}${vin.slice(place + 2)}`;
        const numberOf = (sign: string | undefined) =>
          ['1AJ', '2BKS', '3CLT', '4DMU', '5ENV', '6FW', '7GPX', '8HY', '9RZ', '0'].findIndex((group) =>
            group.includes(sign ?? ' '),
          );
        expect(vinCheckDigit(swapped) === digit).toBe(numberOf(vin[place]) === numberOf(vin[place + 1]));
      }),
      { numRuns: 2000 },
    );
  });

  test('agrees with an independent package over 5,000 random VINs, right and wrong', () => {
    fc.assert(
      fc.property(randomVin, (vin) => {
        expect(validate(withDigit(vin, vinCheckDigit(vin)))).toBe(true);
        expect(vinFault(vin)?.kind === 'check digit').toBe(!validate(vin));
      }),
      { numRuns: 5000 },
    );
  });
});

describe('what no VIN holds', () => {
  test.each(['I', 'O', 'Q', '-', ' '])('the sign "%s" is named with its position', (sign) => {
    for (const position of [1, 9, 17]) {
      const vin = `${'1G4AH59H45G118341'.slice(0, position - 1)}${sign}${'1G4AH59H45G118341'.slice(position)}`;
      expect(vinFault(vin)).toEqual({ kind: 'character', character: sign, position });
    }
  });

  test.each([
    ['', 0],
    ['1G4AH59H45G11834', 16],
    ['1G4AH59H45G1183411', 18],
  ])('"%s" is of the wrong length', (vin, length) => {
    expect(vinFault(vin)).toEqual({ kind: 'length', length });
  });

  test('outside North America a check digit is never required; inside it always is (49 CFR 565; ISO 3779 asks for none)', () => {
    fc.assert(
      fc.property(randomVin, (vin) => {
        const fault = vinFault(vin);
        if (fault?.kind !== 'check digit') return;
        const american = /^([1-5]|7[F-HJ-NPR-Z0-9])/.test(vin);
        expect(fault.required).toBe(american);
      }),
      { numRuns: 3000 },
    );
  });
});

describe('model year', () => {
  // 49 CFR 565.15, Table VII: the whole 30-year cycle
  test('the signs of position 10 run from 1980 to 2009 and again from 2010 to 2039 without I, O, Q, U, Z and 0', () => {
    const cycle = 'A B C D E F G H J K L M N P R S T V W X Y 1 2 3 4 5 6 7 8 9'.split(' ');
    for (const [place, sign] of cycle.entries()) {
      const vin = `1G4AH59H4${sign}G118341`;
      expect(vinModelYears(vin, false)).toEqual([1980 + place, 2010 + place]);
    }
    for (const sign of 'IOQUZ0') expect(vinModelYears(`1G4AH59H4${sign}G118341`, false)).toEqual([]);
  });

  test.each([
    ['1G4AH59H45G118341', true, [2005]],
    ['1J9RP1A36A1644345', true, [2010]],
    ['1J9RP1A36A1644345', false, [1980, 2010]],
    ['1M8GDM9AXKP042788', true, [1989]],
    ['1HGCM82633A004352', true, [2003]],
    ['1G4AH59H45G11834', true, []],
  ] as const)('%s (position 7 counts: %s) means %j', (vin, isLight, years) => {
    expect(vinModelYears(vin, isLight)).toEqual(years);
  });
});

describe('where the maker is registered', () => {
  // ISO 3780, from memory
  test.each([
    ['1G', 'North America', 'US'],
    ['2F', 'North America', 'CA'],
    ['3W', 'North America', 'MX'],
    ['3X', 'North America', null],
    ['4A', 'North America', 'US'],
    ['50', 'North America', 'US'],
    ['7A', 'Oceania', 'NZ'],
    ['7F', 'North America', 'US'],
    ['6F', 'Oceania', 'AU'],
    ['8A', 'South America', 'AR'],
    ['93', 'South America', 'BR'],
    ['AA', 'Africa', 'ZA'],
    ['JM', 'Asia', 'JP'],
    ['KM', 'Asia', 'KR'],
    ['KF', 'Asia', null],
    ['LS', 'Asia', 'CN'],
    ['HX', 'Asia', 'CN'],
    ['MA', 'Asia', 'IN'],
    ['SA', 'Europe', 'GB'],
    ['SN', 'Europe', null],
    ['TW', 'Europe', 'PT'],
    ['T1', 'Europe', 'PT'],
    ['VF', 'Europe', 'FR'],
    ['VS', 'Europe', 'ES'],
    ['WD', 'Europe', 'DE'],
    ['YS', 'Europe', 'SE'],
    ['ZA', 'Europe', 'IT'],
  ])('%s: %s, %s', (vin, region, country) => {
    expect(vinOrigin(vin)).toEqual({ region, country });
  });

  test.each(['', 'W', 'IA', 'OA', 'QA', 'WI', '-A'])('"%s" begins no VIN', (vin) => {
    expect(vinOrigin(vin)).toBeNull();
  });
});
