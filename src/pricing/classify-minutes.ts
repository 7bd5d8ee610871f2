import { addDays, type CalendarDate } from '../quantities/calendar-date.ts';
import { offsetMinutes } from '../quantities/local-time.ts';
import type { RateCard } from '../records/rate-card.ts';
import type { WorkSpan } from './work-minutes.ts';

/** What calendar and clock tell of a minute, and how many such minutes there are. */
export type Stretch = {
  readonly outOfHours: boolean;
  readonly weekend: boolean;
  readonly holiday: boolean;
  readonly minutes: number;
};

export type WorkCalendar = Pick<RateCard, 'ordinaryHours' | 'weekendDays' | 'holidays'>;

const weekdays = ['sunday', 'monday', 'tuesday', 'wednesday', 'thursday', 'friday', 'saturday'] as const;
const minutesOfDay = 1440;
// 1970-01-01, from which days are counted, was a Thursday
const firstWeekday = 4;

/**
 * Whether a day is a weekend day or a holiday.
 * @param day the day
 * @param calendar weekend days and holidays
 */
export function classifyDay(
  day: CalendarDate,
  calendar: WorkCalendar,
): { readonly weekend: boolean; readonly holiday: boolean } {
  const number = Date.parse(`${day}T00:00:00Z`) / (minutesOfDay * 60_000);
  const weekday = weekdays[(((number + firstWeekday) % 7) + 7) % 7] ?? 'sunday';
  return {
    weekend: calendar.weekendDays.includes(weekday),
    holiday: calendar.holidays.some((each) => each.day === day),
  };
}

function isOutOfHours(minuteOfDay: number, { start, end }: WorkCalendar['ordinaryHours']): boolean {
  const [from, to] = [start, end].map((clock) => Number(clock.slice(0, 2)) * 60 + Number(clock.slice(3))) as [
    number,
    number,
  ];
  if (from === to) return false;
  const within = to < from ? minuteOfDay >= from || minuteOfDay < to : minuteOfDay >= from && minuteOfDay < to;
  return !within;
}

/**
 * How many minutes of a span fall out of hours, on weekend days and on holidays, in every combination that occurs.
 * Each minute that passes is judged by the date and time that the business's clock then shows, so that a night in which
 * the clocks change has the minutes that really passed.
 * @param span the span, in minutes since 1970 in UTC
 * @param calendar ordinary hours, weekend days and holidays
 * @param timeZone the business's time zone
 */
export function classifyMinutes(span: WorkSpan, calendar: WorkCalendar, timeZone: string): readonly Stretch[] {
  const steady = offsetMinutes(span.from, timeZone);
  // clocks change by the month, not by the day: the same offset at both ends of a span of hours is the offset of all of it
  const changes = steady !== offsetMinutes(span.to, timeZone) || span.to - span.from > 7 * minutesOfDay;
  const ofDay = new Map<number, ReturnType<typeof classifyDay>>();
  const stretches = new Map<string, Stretch>();
  for (let moment = span.from; moment < span.to; moment += 1) {
    const wall = moment + (changes ? offsetMinutes(moment, timeZone) : steady);
    const day = Math.floor(wall / minutesOfDay);
    const told = ofDay.get(day) ?? classifyDay(addDays('1970-01-01', day), calendar);
    ofDay.set(day, told);
    const outOfHours = isOutOfHours(wall - day * minutesOfDay, calendar.ordinaryHours);
    const key = `${told.weekend} ${told.holiday} ${outOfHours}`;
    stretches.set(key, { ...told, outOfHours, minutes: (stretches.get(key)?.minutes ?? 0) + 1 });
  }
  return [...stretches.values()];
}
