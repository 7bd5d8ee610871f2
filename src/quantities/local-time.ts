import { Problem } from '../problem.ts';

const formats = new Map<string, Intl.DateTimeFormat>();

function formatOf(timeZone: string): Intl.DateTimeFormat {
  const known = formats.get(timeZone);
  if (known !== undefined) return known;
  try {
    const format = new Intl.DateTimeFormat('en-US', { timeZone, timeZoneName: 'longOffset' });
    formats.set(timeZone, format);
    return format;
  } catch {
    throw new Problem(
      `There is no time zone "${timeZone}".`,
      'book.json, timeZone',
      'Name one of the IANA time zones, such as "America/Denver".',
    );
  }
}

/**
 * How far a zone's clock is ahead of UTC at a moment, in minutes (negative west of Greenwich).
 * @param utcMinutes the moment, in minutes since 1970 in UTC
 * @param timeZone IANA time zone
 * @throws Problem when there is no such zone
 */
export function offsetMinutes(utcMinutes: number, timeZone: string): number {
  const parts = formatOf(timeZone).formatToParts(new Date(utcMinutes * 60_000));
  const text = parts.find((part) => part.type === 'timeZoneName')?.value ?? 'GMT';
  const [, sign, hours = '0', minutes = '0'] = /GMT([+-])(\d{2}):(\d{2})/.exec(text) ?? [];
  return (sign === '-' ? -1 : 1) * (Number(hours) * 60 + Number(minutes));
}

const minutesOfDay = 1440;

/**
 * The moment of a wall-clock time in a zone, in whole minutes since 1970 in UTC.
 * A time that occurs twice (clocks set back) is its first occurrence unless the second is asked for; a time that does not
 * occur (clocks set forward) is counted on from the hour before, as ECMAScript's Temporal does by default ("compatible").
 * @param local wall-clock time, `YYYY-MM-DDTHH:MM`
 * @param timeZone IANA time zone, such as "America/Denver"
 * @param occurrence which of two, where the time occurs twice
 * @throws Problem when there is no such zone
 */
export function utcMinutes(local: string, timeZone: string, occurrence: 'first' | 'second' = 'first'): number {
  const [year = 0, month = 1, day = 1, hour = 0, minute = 0] = local.split(/[-T:]/).map(Number);
  const wall = Date.UTC(year, month - 1, day, hour, minute) / 60_000;
  const before = wall - offsetMinutes(wall - minutesOfDay, timeZone);
  const after = wall - offsetMinutes(wall + minutesOfDay, timeZone);
  const occurs = [before, after]
    .filter((moment) => wall - moment === offsetMinutes(moment, timeZone))
    .sort((one, other) => one - other);
  return (occurrence === 'first' ? occurs[0] : occurs.at(-1)) ?? before;
}
