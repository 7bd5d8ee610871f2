import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { classifyMinutes, type WorkCalendar } from '../../src/pricing/classify-minutes.ts';
import { utcMinutes } from '../../src/quantities/local-time.ts';

const calendar: WorkCalendar = {
  ordinaryHours: { start: '07:00', end: '18:00' },
  weekendDays: ['saturday', 'sunday'],
  holidays: [{ day: '2026-11-26', name: 'Thanksgiving' }],
};

function counted(start: string, end: string, zone = 'America/Denver', hours = calendar) {
  const span = { from: utcMinutes(start, zone), to: utcMinutes(end, zone) };
  const stretches = classifyMinutes(span, hours, zone);
  const minutes = (fits: (each: (typeof stretches)[number]) => boolean) =>
    stretches.filter(fits).reduce((sum, each) => sum + each.minutes, 0);
  return {
    all: minutes(() => true),
    outOfHours: minutes((each) => each.outOfHours),
    weekend: minutes((each) => each.weekend),
    holiday: minutes((each) => each.holiday),
  };
}

describe('which minutes of a job fall out of hours, on a weekend, on a holiday', () => {
  test.each([
    [
      'inside ordinary hours',
      '2026-11-24T08:00',
      '2026-11-24T10:00',
      { all: 120, outOfHours: 0, weekend: 0, holiday: 0 },
    ],
    ['into the evening', '2026-11-24T17:15', '2026-11-24T19:25', { all: 130, outOfHours: 85, weekend: 0, holiday: 0 }],
    ['before the morning', '2026-11-24T06:30', '2026-11-24T07:10', { all: 40, outOfHours: 30, weekend: 0, holiday: 0 }],
    [
      'past midnight into a holiday',
      '2026-11-25T23:00',
      '2026-11-26T01:30',
      { all: 150, outOfHours: 150, weekend: 0, holiday: 90 },
    ],
    [
      'past midnight into a weekend',
      '2026-11-27T22:00',
      '2026-11-28T08:00',
      { all: 600, outOfHours: 540, weekend: 480, holiday: 0 },
    ],
    [
      'the night the clocks go forward',
      '2026-03-07T23:00',
      '2026-03-08T04:00',
      { all: 240, outOfHours: 240, weekend: 240, holiday: 0 },
    ],
    [
      'the night the clocks go back',
      '2026-10-31T23:00',
      '2026-11-01T04:00',
      { all: 360, outOfHours: 360, weekend: 360, holiday: 0 },
    ],
    [
      'over two nights and a day',
      '2026-11-23T17:00',
      '2026-11-25T08:00',
      { all: 2340, outOfHours: 1560, weekend: 0, holiday: 0 },
    ],
  ])('%s', (_, start, end, expected) => {
    expect(counted(start, end)).toEqual(expected);
  });

  test('ordinary hours may run over midnight, or all day', () => {
    const night = { ...calendar, ordinaryHours: { start: '22:00', end: '06:00' } };
    expect(counted('2026-11-24T21:00', '2026-11-25T07:00', 'America/Denver', night).outOfHours).toBe(120);
    const always = { ...calendar, ordinaryHours: { start: '00:00', end: '00:00' } };
    expect(counted('2026-11-24T21:00', '2026-11-25T07:00', 'America/Denver', always).outOfHours).toBe(0);
  });

  test('each minute looked at by itself gives the same sums, in any zone, over any change of the clocks', () => {
    const start = fc.integer({ min: 29_450_000, max: 29_990_000 });
    const zones = ['America/Denver', 'Europe/Berlin', 'Australia/Lord_Howe', 'America/Santiago', 'Africa/Cairo'];
    const zone = fc.constantFrom(...zones);
    const formats = new Map(
      zones.map((timeZone) => {
        const parts = new Intl.DateTimeFormat('en-CA', {
          timeZone,
          weekday: 'short',
          year: 'numeric',
          month: '2-digit',
          day: '2-digit',
          hour: '2-digit',
          minute: '2-digit',
          hourCycle: 'h23',
        });
        return [timeZone, parts] as const;
      }),
    );
    const nearChange = fc.constantFrom(
      '2026-03-08',
      '2026-11-01',
      '2026-03-29',
      '2026-10-25',
      '2026-04-24',
      '2026-09-06',
    );
    const moment = fc.oneof(
      start,
      nearChange.map((day) => Date.parse(`${day}T00:00:00Z`) / 60_000 - 300),
    );
    const hours = fc.constantFrom(
      { start: '07:00', end: '18:00' },
      { start: '22:00', end: '06:00' },
      { start: '01:30', end: '02:45' },
      { start: '00:00', end: '12:00' },
    );
    fc.assert(
      fc.property(moment, fc.integer({ min: 1, max: 1800 }), zone, hours, (from, length, timeZone, ordinaryHours) => {
        // "Sun 2026-11-01 01:30", as the platform writes the moment in the zone
        const wall = (minutes: number) => (formats.get(timeZone)?.format(minutes * 60_000) ?? '').replaceAll(',', '');
        const stretches = classifyMinutes({ from, to: from + length }, { ...calendar, ordinaryHours }, timeZone);
        const naive = { weekend: 0, holiday: 0, outOfHours: 0 };
        for (let minute = from; minute < from + length; minute += 1) {
          const local = wall(minute);
          const clock = local.slice(-5);
          const within =
            ordinaryHours.end < ordinaryHours.start
              ? clock >= ordinaryHours.start || clock < ordinaryHours.end
              : clock >= ordinaryHours.start && clock < ordinaryHours.end;
          if (local.startsWith('Sat') || local.startsWith('Sun')) naive.weekend += 1;
          if (local.slice(4, 14) === '2026-11-26') naive.holiday += 1;
          if (!within) naive.outOfHours += 1;
        }
        const sum = (fits: (each: (typeof stretches)[number]) => boolean) =>
          stretches.filter(fits).reduce((all, each) => all + each.minutes, 0);
        expect(sum(() => true)).toBe(length);
        expect(sum((each) => each.weekend)).toBe(naive.weekend);
        expect(sum((each) => each.holiday)).toBe(naive.holiday);
        expect(sum((each) => each.outOfHours)).toBe(naive.outOfHours);
      }),
      { numRuns: 60 },
    );
  });
});
