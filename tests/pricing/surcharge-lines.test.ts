import { describe, expect, test } from 'vitest';
import { oneOf } from '../../src/pricing/priced-line.ts';
import { settingOf } from '../../src/pricing/setting.ts';
import { surchargeLines } from '../../src/pricing/surcharge-lines.ts';
import { type JobInput, job } from '../../src/records/job.ts';
import { rateCard } from '../../src/records/rate-card.ts';
import { soundFacts, soundJob } from '../../src/rules/sound-job.ts';
import { wordingIn } from './worded.ts';

const setting = settingOf({ ...soundFacts(soundJob).book, timeZone: 'America/Denver' }, wordingIn('en'));
const rates = rateCard.parse({
  schema: 'keyout-rates-1',
  hourly: [{ priceMinorUnits: 6000 }],
  surcharges: [
    { name: 'Out of hours', when: 'out of hours', percent: '50' },
    { name: 'Weekend', when: 'weekend', percent: '75' },
    { name: 'Holiday', when: 'holiday', percent: '100' },
    { name: 'Weekend, old price', when: 'weekend', percent: '60', to: '2025-12-31' },
  ],
  holidays: [{ day: '2026-11-26', name: 'Thanksgiving' }],
});
const work = [oneOf('flat rate', 'New fit', 12_000, 'flat rate')];
const charged = (day: string, labour: JobInput['labour'], given = rates) =>
  surchargeLines(job.parse({ schema: 'keyout-job-1', id: `${day}-AAAA`, day, labour }), work, given, setting).map(
    (line) => [line.what, line.unitPriceMinorUnits, line.because],
  );

describe('a surcharge', () => {
  test('is not taken inside ordinary hours', () => {
    expect(charged('2026-11-24', { start: '2026-11-24T08:00', end: '2026-11-24T10:00' })).toEqual([]);
  });

  test('is taken on the share of the price that falls out of hours', () => {
    // 30 of 120 minutes: a quarter of 120.00, half of it
    expect(charged('2026-11-24', { start: '2026-11-24T16:30', end: '2026-11-24T18:30' })).toEqual([
      ['Out of hours', '1500', '30 min of 2 h outside 07:00 to 18:00: 50 % of that share of $120.00'],
    ]);
  });

  test('is the highest that fits each minute, once: past midnight from a Friday evening into Saturday', () => {
    expect(charged('2026-11-27', { start: '2026-11-27T17:00', end: '2026-11-28T01:00' })).toEqual([
      ['Weekend', '1125', '1 h of 8 h on a weekend: 75 % of that share of $120.00'],
      ['Out of hours', '4500', '6 h of 8 h outside 07:00 to 18:00: 50 % of that share of $120.00'],
    ]);
  });

  test('of a holiday names it, and takes the whole price of a visit without times', () => {
    expect(charged('2026-11-26', {})).toEqual([
      ['Holiday', '12000', 'the whole visit on a holiday (Thanksgiving): 100 % of $120.00'],
    ]);
    expect(charged('2026-11-24', {})).toEqual([]);
  });

  test('counts the hour that a night of changing clocks has more or less', () => {
    const night = rateCard.parse({
      ...rates,
      surcharges: [{ name: 'Out of hours', when: 'out of hours', percent: '100' }],
      ordinaryHours: { start: '03:00', end: '23:00' },
    });
    // 00:00 to 06:00 by the clock: five hours passed, two of them before three o'clock; seven in autumn, four before three
    expect(charged('2026-03-08', { start: '2026-03-08T00:00', end: '2026-03-08T06:00' }, night)[0]?.[1]).toBe('4800');
    expect(charged('2026-11-01', { start: '2026-11-01T00:00', end: '2026-11-01T06:00' }, night)[0]?.[1]).toBe('6857');
  });

  test('of nothing per cent, as one payer agreed, is no line', () => {
    const none = rateCard.parse({
      ...rates,
      surcharges: [...rates.surcharges, { name: 'None', when: 'out of hours', percent: '0' }],
    });
    expect(charged('2026-11-24', { start: '2026-11-24T16:30', end: '2026-11-24T18:30' }, none)).toEqual([]);
  });
});
