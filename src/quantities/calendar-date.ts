/** A calendar date, `YYYY-MM-DD`, without clock or zone. */
export type CalendarDate = string;

const millisecondsPerDay = 86_400_000;

function utcMilliseconds(date: CalendarDate): number {
  return Date.UTC(Number(date.slice(0, 4)), Number(date.slice(5, 7)) - 1, Number(date.slice(8, 10)));
}

/**
 * Whether a text is a date that exists ("2026-02-30" is not).
 * @param text the text to judge
 */
export function isCalendarDate(text: string): boolean {
  return /^\d{4}-\d{2}-\d{2}$/.test(text) && new Date(utcMilliseconds(text)).toISOString().slice(0, 10) === text;
}

/**
 * The date some days later ("2026-02-27" + 2 → "2026-03-01").
 * @param date the date to count from
 * @param days whole days, negative for earlier
 */
export function addDays(date: CalendarDate, days: number): CalendarDate {
  return new Date(utcMilliseconds(date) + days * millisecondsPerDay).toISOString().slice(0, 10);
}

/**
 * Whole days from one date to another ("2026-11-24" to "2026-11-25" → 1).
 * @param from the earlier date
 * @param to the later date
 */
export function daysBetween(from: CalendarDate, to: CalendarDate): number {
  return Math.round((utcMilliseconds(to) - utcMilliseconds(from)) / millisecondsPerDay);
}
