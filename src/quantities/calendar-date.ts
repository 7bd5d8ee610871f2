import dayjs from 'dayjs';
import customParseFormat from 'dayjs/plugin/customParseFormat.js';
import utc from 'dayjs/plugin/utc.js';

// every date is counted in UTC, where each day has 24 hours
dayjs.extend(utc);
dayjs.extend(customParseFormat);

/** A calendar date, `YYYY-MM-DD`, without clock or zone. */
export type CalendarDate = string;

const form = 'YYYY-MM-DD';

/**
 * Whether a text is a date that exists ("2026-02-30" is not).
 * @param text the text to judge
 */
export function isCalendarDate(text: string): boolean {
  return /^\d{4}-\d{2}-\d{2}$/.test(text) && dayjs.utc(text, form, true).isValid();
}

/**
 * The date some days later ("2026-02-27" + 2 → "2026-03-01").
 * @param date the date to count from
 * @param days whole days, negative for earlier
 */
export function addDays(date: CalendarDate, days: number): CalendarDate {
  return dayjs.utc(date, form, true).add(days, 'day').format(form);
}

/**
 * Whole days from one date to another ("2026-11-24" to "2026-11-25" → 1).
 * @param from the earlier date
 * @param to the later date
 */
export function daysBetween(from: CalendarDate, to: CalendarDate): number {
  return dayjs.utc(to, form, true).diff(dayjs.utc(from, form, true), 'day');
}

/**
 * Minutes of the wall clock from one time to another; a change of the clocks between them is left aside.
 * @param from the earlier time, `YYYY-MM-DDTHH:MM`
 * @param to the later time, `YYYY-MM-DDTHH:MM`
 */
export function clockMinutesBetween(from: string, to: string): number {
  return dayjs.utc(to).diff(dayjs.utc(from), 'minute');
}
