import currencyCodes from 'currency-codes';
import { Decimal } from 'decimal.js';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addDays, daysBetween, isCalendarDate } from '../../src/quantities/calendar-date.ts';
import { currencyDigits } from '../../src/quantities/currency-digits.ts';
import { decimalText, lineAmountMinorUnits, millionths } from '../../src/quantities/decimal.ts';
import { divideRounded } from '../../src/quantities/divide-rounded.ts';
import { priceForAmount } from '../../src/quantities/price-for-amount.ts';
import { roundMinutes } from '../../src/quantities/round-minutes.ts';
import { shareOut } from '../../src/quantities/share-out.ts';
import { writeMoney, writePrice } from '../../src/quantities/write-money.ts';

describe('rounding', () => {
  test('half goes away from zero (EN 16931 practice: 365.125 to 365.13, -156,435.885 to -156,435.89)', () => {
    expect(divideRounded(365_125n, 10n)).toBe(36_513n);
    expect(divideRounded(-156_435_885n, 10n)).toBe(-15_643_589n);
    expect(divideRounded(25n, 10n, 'half even')).toBe(2n);
  });

  test('a naive second calculation in decimal.js agrees', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -999_999, max: 999_999 }),
        fc.integer({ min: 0, max: 9_999_999 }),
        fc.constantFrom('1', '12', '60'),
        (quantity, price, base) => {
          const quantityText = decimalText(BigInt(quantity) * 100n);
          const priceText = decimalText(BigInt(price) * 1000n);
          const naive = new Decimal(quantityText)
            .times(priceText)
            .div(base)
            .toDecimalPlaces(0, Decimal.ROUND_HALF_UP)
            .toNumber();
          expect(lineAmountMinorUnits(quantityText, priceText, base) - naive).toBe(0);
        },
      ),
    );
  });

  test('decimal text survives the way there and back', () => {
    for (const text of ['0', '8.875', '-1.5', '72.5', '0.000001']) expect(decimalText(millionths(text))).toBe(text);
  });
});

describe('sharing out', () => {
  test('the 1790 census gives the published seats of 105 (largest remainder, as voted for in 1792)', () => {
    const people = [
      236841, 55540, 70835, 68705, 278514, 475327, 141822, 179570, 331589, 353523, 432879, 68446, 206236, 85533, 630560,
    ];
    expect(shareOut(105, people.map(BigInt))).toEqual([7, 2, 2, 2, 8, 14, 4, 5, 10, 10, 13, 2, 6, 2, 18]);
    expect(shareOut(120, people.map(BigInt))).toEqual([8, 2, 2, 2, 9, 16, 5, 6, 11, 12, 14, 2, 7, 3, 21]);
  });

  test('shares always sum to the whole', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -1_000_000, max: 1_000_000 }),
        fc.array(fc.nat(10_000), { minLength: 1, maxLength: 12 }),
        (total, weights) => {
          expect(shareOut(total, weights.map(BigInt)).reduce((sum, share) => sum + share, 0) - total).toBe(0);
        },
      ),
    );
  });
});

describe('time and money', () => {
  // 29 CFR 785.48(b), quarter hour practice: 0-7 minutes down, 8-14 up
  test.each([
    [7, 0],
    [8, 15],
    [22, 15],
    [23, 30],
    [60, 60],
  ])('%i minutes to the nearest quarter hour are %i', (minutes, expected) => {
    expect(roundMinutes(minutes, 15, 'nearest')).toBe(expected);
  });

  test('137 miles at the 2026 rate of 72.5 cents are 99.33 (IRS standard mileage rate 2026)', () => {
    expect(lineAmountMinorUnits('137', '72.5')).toBe(9933);
  });

  test('minor units agree with the ISO 4217 list of an independent package', () => {
    // metals, bond units and test codes (XA., XB., XD., XS., XT., XU., XX.) have no minor unit in the standard; the package gives 0
    const listed = currencyCodes.data.filter((each) => !/^X(?!AF|OF|PF|CD|CG)/.test(each.code));
    expect(listed.length).toBeGreaterThan(150);
    for (const each of listed) expect([each.code, currencyDigits(each.code)]).toEqual([each.code, each.digits]);
  });

  test('money is written in the locale with the currency’s own decimals', () => {
    expect(writeMoney(123_450, 'USD', 'en-US')).toBe('$1,234.50');
    expect(writeMoney(1235, 'JPY', 'en-US')).toBe('¥1,235');
    expect(writeMoney(123_450, 'EUR', 'de-DE')).toBe('1.234,50\u00a0€');
    expect(writeMoney(-5, 'USD', 'en-US')).toBe('-$0.05');
  });

  test('a price keeps the decimals it has beyond the minor unit', () => {
    expect(writePrice('72.5', 'USD', 'en-US')).toBe('$0.725');
    expect(writePrice('14500', 'USD', 'en-US')).toBe('$145.00');
    expect(writePrice('1234.5', 'JPY', 'en-US')).toBe('¥1,234.5');
    expect(writePrice('-1234567.000001', 'KWD', 'en-US')).toBe('-KWD\u00a01,234.567000001');
  });

  test('a price is found at which a quantity costs exactly an amount', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 100_000_000 }),
        fc.integer({ min: -1_000_000, max: 1_000_000 }),
        fc.constantFrom('1', '60'),
        (count, amount, base) => {
          const quantity = decimalText(BigInt(amount < 0 ? -count : count) * 1000n);
          const price = priceForAmount(amount, quantity, base);
          expect(price).not.toBeNull();
          expect(lineAmountMinorUnits(quantity, price ?? '0', base) - amount).toBe(0);
        },
      ),
    );
    expect(priceForAmount(1, '0')).toBeNull();
    expect(priceForAmount(-1, '1')).toBeNull();
  });

  test('dates that do not exist are refused, and days are counted over a leap day', () => {
    expect(isCalendarDate('2026-02-30')).toBe(false);
    expect(addDays('2028-02-28', 2)).toBe('2028-03-01');
    expect(daysBetween('2028-02-28', '2028-03-01')).toBe(2);
  });
});
