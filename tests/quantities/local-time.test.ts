import dayjs from 'dayjs';
import timezone from 'dayjs/plugin/timezone.js';
import utc from 'dayjs/plugin/utc.js';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { utcMinutes } from '../../src/quantities/local-time.ts';

dayjs.extend(utc);
dayjs.extend(timezone);

const zones = [
  'America/Denver',
  'America/St_Johns',
  'Europe/Berlin',
  'Asia/Kathmandu',
  'Australia/Lord_Howe',
  'Pacific/Auckland',
  'America/Santiago',
  'Pacific/Kiritimati',
  'UTC',
];

describe('a time on the wall becomes a moment', () => {
  // transitions of 2026: US second Sunday of March and first of November (15 U.S.C. 260a), EU last Sundays of March and
  // October at 01:00 UTC (Directive 2000/84/EC)
  test.each([
    ['2026-03-08T01:59', 'America/Denver', '2026-03-08T08:59Z'],
    ['2026-03-08T03:00', 'America/Denver', '2026-03-08T09:00Z'],
    ['2026-11-01T00:59', 'America/Denver', '2026-11-01T06:59Z'],
    ['2026-11-01T02:00', 'America/Denver', '2026-11-01T09:00Z'],
    ['2026-03-29T03:00', 'Europe/Berlin', '2026-03-29T01:00Z'],
    ['2026-10-25T03:00', 'Europe/Berlin', '2026-10-25T02:00Z'],
    ['2026-06-01T12:00', 'Asia/Kathmandu', '2026-06-01T06:15Z'],
  ])('%s in %s', (local, zone, moment) => {
    expect(utcMinutes(local, zone) * 60_000).toBe(Date.parse(moment.replace('Z', ':00Z')));
  });

  test('a time that occurs twice is the first unless the second is asked for', () => {
    expect(utcMinutes('2026-11-01T01:30', 'America/Denver') * 60_000).toBe(Date.parse('2026-11-01T07:30:00Z'));
    expect(utcMinutes('2026-11-01T01:30', 'America/Denver', 'second') * 60_000).toBe(
      Date.parse('2026-11-01T08:30:00Z'),
    );
  });

  test('a time that the clock skips is counted on from the hour before', () => {
    expect(utcMinutes('2026-03-08T02:30', 'America/Denver')).toBe(utcMinutes('2026-03-08T03:30', 'America/Denver'));
  });

  test('a zone that does not exist is named', () => {
    expect(() => utcMinutes('2026-03-08T02:30', 'America/Nowhere')).toThrow(/no time zone "America\/Nowhere"/);
  });

  test('the wall clock of the moment, as dayjs writes it, is the time that went in', () => {
    fc.assert(
      fc.property(fc.integer({ min: 26_297_280, max: 31_556_160 }), fc.constantFrom(...zones), (moment, zone) => {
        const wall = (minutes: number) =>
          dayjs(minutes * 60_000)
            .tz(zone)
            .format('YYYY-MM-DDTHH:mm');
        const back = [utcMinutes(wall(moment), zone), utcMinutes(wall(moment), zone, 'second')];
        expect(back.map(wall)).toEqual([wall(moment), wall(moment)]);
        expect(back).toContain(moment);
      }),
      { numRuns: 500 },
    );
  });
});
