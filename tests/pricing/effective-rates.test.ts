import { describe, expect, test } from 'vitest';
import { effectiveRates, validOn } from '../../src/pricing/effective-rates.ts';
import { flatRateOf, orderOnDay } from '../../src/pricing/flat-rate.ts';
import { type JobInput, job } from '../../src/records/job.ts';
import { payer } from '../../src/records/payer.ts';
import { rateCard } from '../../src/records/rate-card.ts';
import { soundPayer } from '../../src/rules/sound-job.ts';

const general = rateCard.parse({
  schema: 'keyout-rates-1',
  flatRates: [
    { visit: 'new fit', priceMinorUnits: 14_500 },
    { visit: 'new fit', class: 'heavy truck', priceMinorUnits: 16_500 },
    { visit: 'swap', priceMinorUnits: 9500 },
  ],
  hourly: [{ priceMinorUnits: 8800 }],
  parts: [
    { id: 'fuse-holder', name: 'Fuse holder', priceMinorUnits: 480 },
    { id: 'wire', name: 'Wire', priceMinorUnits: '38.5' },
  ],
  partsMarkUpPercent: '15',
  documentDiscountPercent: '2',
  ordinaryHours: { start: '06:00', end: '20:00' },
});

const withRates = (rates: unknown) => payer.parse({ ...soundPayer, rates });
const laid = (rates: unknown) => effectiveRates(general, withRates(rates));
const jobOf = (id: string, changed: Partial<JobInput>) =>
  job.parse({ schema: 'keyout-job-1', id: `2026-06-05-${id}`, day: '2026-06-05', ...changed });
const flat = (rates: typeof general, visit: 'new fit' | 'swap', vehicleClass?: 'heavy truck' | 'van') =>
  flatRateOf(
    jobOf('AAAA', { identity: { visit }, vehicle: vehicleClass === undefined ? {} : { class: vehicleClass } }),
    rates,
  )?.priceMinorUnits;

describe('a payer’s prices are laid over the general ones', () => {
  test('a payer without prices has the general ones', () => {
    expect(effectiveRates(general, soundPayer)).toEqual({ ...general });
  });

  test('one price of a payer leaves the others as they are', () => {
    const rates = laid({ parts: [{ id: 'wire', name: 'Wire', priceMinorUnits: 30 }] });
    const part = (id: string) =>
      validOn(
        rates.parts.filter((each) => each.id === id),
        '2026-06-05',
      )?.priceMinorUnits;
    expect([part('fuse-holder'), part('wire')]).toEqual([480, 30]);
    expect(flat(rates, 'swap')).toBe(9500);
    expect(rates.hourly).toEqual(general.hourly);
  });

  test('a payer’s price counts only on its days', () => {
    const rates = laid({ hourly: [{ priceMinorUnits: 7000, from: '2026-06-01', to: '2026-06-30' }] });
    const hourly = (day: string) => validOn(rates.hourly, day)?.priceMinorUnits;
    expect(['2026-05-31', '2026-06-01', '2026-06-30', '2026-07-01'].map(hourly)).toEqual([8800, 7000, 7000, 8800]);
  });

  test('a payer’s flat rate for a visit counts for every class of vehicle, its narrower one for that class', () => {
    const wide = laid({ flatRates: [{ visit: 'new fit', priceMinorUnits: 12_000 }] });
    expect([flat(wide, 'new fit', 'van'), flat(wide, 'new fit', 'heavy truck')]).toEqual([12_000, 12_000]);
    const both = laid({
      flatRates: [
        { visit: 'new fit', class: 'heavy truck', priceMinorUnits: 13_000 },
        { visit: 'new fit', priceMinorUnits: 12_000 },
      ],
    });
    expect([flat(both, 'new fit', 'van'), flat(both, 'new fit', 'heavy truck')]).toEqual([12_000, 13_000]);
    const dated = laid({ flatRates: [{ visit: 'new fit', priceMinorUnits: 12_000, to: '2026-05-31' }] });
    expect([flat(dated, 'new fit', 'van'), flat(dated, 'new fit', 'heavy truck')]).toEqual([14_500, 16_500]);
  });

  test('a payer may agree what is the default of a rate card: nothing on top, no discount, hours from seven to six', () => {
    const agreed = {
      partsMarkUpPercent: '0',
      documentDiscountPercent: '0',
      ordinaryHours: { start: '07:00', end: '18:00' },
    };
    expect(laid(agreed)).toMatchObject(agreed);
    expect(laid({})).toMatchObject({
      partsMarkUpPercent: '15',
      documentDiscountPercent: '2',
      ordinaryHours: { start: '06:00', end: '20:00' },
    });
    expect(withRates({}).rates).toEqual({});
  });
});

test('jobs of one day that share a flat rate are counted together, whatever their class', () => {
  const jobs = [
    jobOf('CCCC', { identity: { visit: 'new fit' }, vehicle: { class: 'van' } }),
    jobOf('AAAA', { identity: { visit: 'new fit' }, vehicle: { class: 'car' } }),
    jobOf('BBBB', { identity: { visit: 'new fit' }, vehicle: { class: 'heavy truck' } }),
    jobOf('DDDD', { identity: { visit: 'swap' } }),
  ];
  expect(jobs.map((each) => orderOnDay(each, jobs, general))).toEqual([2, 1, 1, 1]);
});
