import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { batteryPercent } from '../../src/electrics/battery-state.ts';
import { iccidFault } from '../../src/electrics/iccid.ts';
import { hasLuhnDigit } from '../../src/electrics/luhn.ts';
import { standingDays, usableAmpereHours } from '../../src/electrics/standing-days.ts';
import { coveredSupplyCodes, supplyCodes } from '../../src/electrics/supply-codes.ts';
import { cranks } from '../../src/records/cranks.ts';
import { terminalNumbers } from '../../src/records/wire-role.ts';

describe('battery at rest', () => {
  // Army TM 5-3805-262-20 p. 5-142
  test.each([
    [11_500, 0],
    [11_700, 0],
    [12_000, 25],
    [12_200, 50],
    [12_400, 75],
    [12_600, 100],
    [12_800, 100],
  ])('%i mV holds %i %%, and twice the volts of a 24 V pair the same', (millivolts, percent) => {
    expect(batteryPercent(millivolts, 12)).toBe(percent);
    expect(batteryPercent(millivolts * 2, 24)).toBe(percent);
  });

  test('above what a full battery rests at (13.0 V, Army TM 9-6115-730-24) nothing is said', () => {
    expect(batteryPercent(13_000, 12)).toBe(100);
    expect(batteryPercent(13_001, 12)).toBeNull();
    expect(batteryPercent(26_001, 24)).toBeNull();
  });

  test('more volts never mean less charge', () => {
    fc.assert(
      fc.property(fc.integer({ min: 10_000, max: 13_000 }), fc.integer({ min: 0, max: 500 }), (low, more) => {
        const high = Math.min(13_000, low + more);
        expect(batteryPercent(high, 12) ?? -1).toBeGreaterThanOrEqual(batteryPercent(low, 12) ?? 101);
      }),
    );
  });
});

describe('standing time', () => {
  // definition of the ampere hour
  test('30 Ah usable last 25 days at 50 mA and 250 days at 5 mA', () => {
    expect(standingDays(60, 50)).toBeCloseTo(25, 9);
    expect(standingDays(60, 5)).toBeCloseTo(250, 9);
  });

  test('a battery three quarters full has half of that to give, one half full has nothing', () => {
    expect(usableAmpereHours(60, 75)).toBeCloseTo(15, 9);
    expect(standingDays(60, 50, 75)).toBeCloseTo(12.5, 9);
    expect(standingDays(60, 50, 50)).toBe(0);
    expect(standingDays(60, 50, 20)).toBe(0);
  });

  // reserve capacity: minutes at 25 A (SAE J537): 120 min are 50 Ah
  test('50 Ah at 25 A last two hours', () => {
    expect(standingDays(100, 25_000) * 24).toBeCloseTo(2, 9);
  });
});

describe('supply codes of ISO 16750-2', () => {
  // tables 1 and 2, volts
  test.each([
    ['A', 12, 6, 16],
    ['B', 12, 8, 16],
    ['C', 12, 9, 16],
    ['D', 12, 10.5, 16],
    ['E', 24, 10, 32],
    ['F', 24, 16, 32],
    ['G', 24, 22, 32],
    ['H', 24, 18, 32],
  ] as const)('code %s: %i V system, %d to %d V', (code, systemVolts, voltsMin, voltsMax) => {
    expect(supplyCodes.find((each) => each.code === code)).toEqual({ code, systemVolts, voltsMin, voltsMax });
    expect(coveredSupplyCodes(voltsMin, voltsMax, systemVolts)).toContain(code);
    expect(coveredSupplyCodes(voltsMin + 0.1, voltsMax, systemVolts)).not.toContain(code);
    expect(coveredSupplyCodes(voltsMin, voltsMax - 0.1, systemVolts)).not.toContain(code);
  });

  test('a window of 8 to 32 V covers B, C, D on 12 V and all four on 24 V; one of 9 to 16 V none on 24 V', () => {
    expect(coveredSupplyCodes(8, 32, 12)).toEqual(['B', 'C', 'D']);
    expect(coveredSupplyCodes(8, 32, 24)).toEqual(['E', 'F', 'G', 'H']);
    expect(coveredSupplyCodes(9, 16, 24)).toEqual([]);
  });
});

// DIN 72552: 30 battery positive direct, 15 switched by the ignition switch, 75 accessory, 50 starter control, 31 ground, 58 lights
test.each([
  ['constant', '30'],
  ['ignition', '15'],
  ['accessory', '75'],
  ['start', '50'],
  ['ground', '31'],
  ['lighting', '58'],
  ['signal', null],
  ['unknown', null],
] as const)('%s is terminal %s of DIN 72552', (role, terminal) => {
  expect(terminalNumbers[role]).toBe(terminal);
});

describe('numbers with a Luhn digit', () => {
  test('the printed example of the Luhn algorithm, 7992739871 3, from memory', () => {
    expect([...'0123456789'].filter((digit) => hasLuhnDigit(`7992739871${digit}`))).toEqual(['3']);
  });

  test('text that is not digits, and a single digit, have none', () => {
    for (const text of ['', '0', 'abc', '12a4', ' 18']) expect(hasLuhnDigit(text)).toBe(false);
  });

  test('exactly one last digit fits any 18 digits of a card, and a wrong digit elsewhere is always caught (ITU-T E.118)', () => {
    const body = fc.array(fc.integer({ min: 0, max: 9 }), { minLength: 16, maxLength: 16 });
    fc.assert(
      fc.property(body, fc.integer({ min: 2, max: 17 }), fc.integer({ min: 1, max: 9 }), (digits, place, shift) => {
        const start = `89${digits.join('')}`;
        const right = [...'0123456789'].filter((digit) => iccidFault(start + digit) === null);
        expect(right).toHaveLength(1);
        const spoilt = `${start.slice(0, place)}${(Number(start[place]) + shift) % 10}${start.slice(place + 1)}`;
        expect(iccidFault(spoilt + right[0])).toBe('check digit wrong');
      }),
    );
  });

  test.each([
    ['89 4912 0000 0000 0000 5', null, 'spaces do not count'],
    ['8949-1200-0000-0000-005', null, 'hyphens do not count'],
    ['8949120000000000006', 'check digit wrong', '19 digits with the wrong last'],
    ['89491200000000000057', null, '20 digits, the 19th being the check digit'],
    ['894912000000000001', null, '18 digits, printed without one'],
    ['1949120000000000001', 'does not begin with 89', 'another industry'],
    ['89491200000000000', 'not 18 to 20 digits', '17 digits'],
    ['894912000000000000000', 'not 18 to 20 digits', '21 digits'],
    ['8949120000000000F01', 'not 18 to 20 digits', 'a letter'],
  ])('%s: %s (%s)', (iccid, fault, _why) => {
    expect(iccidFault(iccid)).toBe(fault);
  });
});

test.each([
  [{}, true],
  [{ drive: 'combustion' }, true],
  [{ drive: 'hybrid' }, false],
  [{ drive: 'electric' }, false],
  [{ class: 'trailer' }, false],
  [{ class: 'plant', drive: 'combustion' }, true],
] as const)('a vehicle with %j cranks: %s', (vehicle, answer) => {
  expect(cranks(vehicle)).toBe(answer);
});
