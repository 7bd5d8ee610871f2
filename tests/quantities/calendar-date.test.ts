import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addDays, clockMinutesBetween, daysBetween, isCalendarDate } from '../../src/quantities/calendar-date.ts';

// the oracle: Gregorian calendar rules (leap years by 4, not by 100 but by 400), counted here without any library
const leap = (year: number) => year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
const lengths = (year: number) => [31, leap(year) ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
const text = (year: number, month: number, day: number) =>
  `${String(year).padStart(4, '0')}-${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`;
const anyDate = fc
  .tuple(fc.integer({ min: 1900, max: 2200 }), fc.integer({ min: 1, max: 12 }), fc.integer({ min: 1, max: 31 }))
  .map(([year, month, day]) => ({ year, month, day, exists: day <= (lengths(year)[month - 1] ?? 0) }));

describe('calendar dates', () => {
  test('exist as the Gregorian calendar says', () => {
    fc.assert(
      fc.property(anyDate, ({ year, month, day, exists }) => isCalendarDate(text(year, month, day)) === exists),
    );
  });

  test.each([
    '',
    '2026-13-01',
    '2026-00-10',
    '2026-11-00',
    '2026-2-3',
    '20261124',
    '2026-11-24T00:00',
    ' 2026-11-24',
    '2026-02-29',
  ])('"%s" is none', (wrong) => expect(isCalendarDate(wrong)).toBe(false));

  test('the next day is the next of the month, or the first of the next', () => {
    fc.assert(
      fc.property(
        anyDate.filter((date) => date.exists),
        ({ year, month, day }) => {
          const last = day === lengths(year)[month - 1];
          const next = !last
            ? text(year, month, day + 1)
            : month === 12
              ? text(year + 1, 1, 1)
              : text(year, month + 1, 1);
          expect(addDays(text(year, month, day), 1)).toBe(next);
          expect(addDays(next, -1)).toBe(text(year, month, day));
          expect(daysBetween(text(year, month, day), next)).toBe(1);
        },
      ),
    );
  });

  test('there and back again is the same day', () => {
    fc.assert(
      fc.property(
        anyDate.filter((date) => date.exists),
        fc.integer({ min: -20_000, max: 20_000 }),
        (date, days) => {
          const from = text(date.year, date.month, date.day);
          expect(daysBetween(from, addDays(from, days))).toBe(days);
        },
      ),
    );
  });

  test.each([
    ['2026-11-24T08:00', '2026-11-24T09:30', 90],
    ['2026-11-24T23:50', '2026-11-25T00:10', 20],
    ['2026-11-24T09:00', '2026-11-24T08:00', -60],
    // the clocks change that night in most of the United States; the wall clock shows three hours
    ['2026-03-08T01:00', '2026-03-08T04:00', 180],
  ])('from %s to %s the clock goes on by %i minutes', (from, to, minutes) => {
    expect(clockMinutesBetween(from, to)).toBe(minutes);
  });
});
