import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { effectiveRates, validOn } from '../../src/pricing/effective-rates.ts';
import { flatRateOf, orderOnDay } from '../../src/pricing/flat-rate.ts';
import { payer } from '../../src/records/payer.ts';
import { type RateCard, rateCard } from '../../src/records/rate-card.ts';
import { soundPayer } from '../../src/rules/sound-job.ts';
import { jobOf } from './billed.ts';

type Flat = { visit: string; device?: string; class?: string; priceMinorUnits: number; from?: string; to?: string };

const cardOf = (flatRates: readonly object[], more: object = {}): RateCard =>
  rateCard.parse({ schema: 'keyout-rates-1', hourly: [{ priceMinorUnits: 6000 }], flatRates, ...more });
const laidOver = (general: RateCard, own: object) =>
  effectiveRates(general, payer.parse({ ...soundPayer, rates: own }));

const day = '2026-06-05';
const maybe = (...values: string[]) => fc.option(fc.constantFrom(...values), { nil: undefined, freq: 2 });
const flat = fc
  .record({
    visit: fc.constantFrom('new fit', 'swap'),
    device: maybe('orv-3', 'tav-1'),
    class: maybe('van', 'heavy truck'),
    from: maybe('2026-01-01', '2026-06-05', '2026-06-06'),
    to: maybe('2026-06-04', '2026-06-05', '2026-12-31'),
  })
  .map(
    (each) =>
      Object.fromEntries(Object.entries(each).filter(([, value]) => value !== undefined)) as Omit<
        Flat,
        'priceMinorUnits'
      >,
  );
const flats = fc.array(flat, { maxLength: 5 });
const priced = (all: readonly object[], from: number): Flat[] =>
  all.map((each, index) => ({ ...each, priceMinorUnits: from + index }) as Flat);

// the rule as a person would say it: the payer's list before the general one, the narrower before the wider (a device is
// narrower than a class), the later before the earlier; no step of the program's own way (repeating entries) is used
function naivePrice(
  lists: readonly (readonly Flat[])[],
  visit: string,
  device: string,
  vehicleClass: string,
): number | null {
  for (const list of lists) {
    let best: Flat | null = null;
    const score = (each: Flat) => (each.device ? 2 : 0) + (each.class ? 1 : 0);
    for (const each of list) {
      const meant =
        each.visit === visit &&
        [undefined, device].includes(each.device) &&
        [undefined, vehicleClass].includes(each.class) &&
        (each.from ?? day) <= day &&
        day <= (each.to ?? day);
      if (meant && (best === null || score(each) >= score(best))) best = each;
    }
    if (best !== null) return best.priceMinorUnits;
  }
  return null;
}

test('whatever the lists say, the payer’s flat rate counts before the general one and the narrower before the wider', () => {
  fc.assert(
    fc.property(
      flats,
      flats,
      fc.constantFrom('new fit', 'swap'),
      fc.constantFrom('orv-3', 'tav-1'),
      fc.constantFrom('van', 'heavy truck'),
      (general, own, visit, device, vehicleClass) => {
        const lists = { general: priced(general, 1000), own: priced(own, 5000) };
        const job = jobOf('AAAA', {
          identity: { visit },
          device: { profile: device },
          vehicle: { class: vehicleClass },
        } as never);
        const found = flatRateOf(job, laidOver(cardOf(lists.general), { flatRates: lists.own }));
        expect(found?.priceMinorUnits ?? null).toBe(
          naivePrice([lists.own, lists.general], visit, device, vehicleClass),
        );
      },
    ),
    {
      numRuns: 400,
      // the payer's own price for a device, beside one for a class and a general one for the device
      examples: [
        [
          [{ visit: 'swap', device: 'orv-3' }],
          [
            { visit: 'swap', class: 'van' },
            { visit: 'swap', device: 'orv-3' },
          ],
          'swap',
          'orv-3',
          'van',
        ],
      ],
    },
  );
});

describe('every kind of price', () => {
  const dated = { from: '2026-06-01' };
  const kinds: [keyof RateCard, object, object][] = [
    ['hourly', { priceMinorUnits: 6000 }, { priceMinorUnits: 5000, ...dated }],
    ['waiting', { freeMinutes: 15 }, { freeMinutes: 20, ...dated }],
    ['callOut', { visits: ['swap'], priceMinorUnits: 100 }, { visits: ['swap'], priceMinorUnits: 90, ...dated }],
    [
      'travel',
      { unit: 'mi', pricePerDistanceMinorUnits: '67' },
      { unit: 'mi', pricePerDistanceMinorUnits: '60', ...dated },
    ],
    [
      'extras',
      { id: 'buzzer', name: 'Buzzer', priceMinorUnits: 10 },
      { id: 'buzzer', name: 'Buzzer', priceMinorUnits: 9, ...dated },
    ],
    [
      'parts',
      { id: 'holder', name: 'Holder', priceMinorUnits: '10' },
      { id: 'holder', name: 'Holder', priceMinorUnits: '9', ...dated },
    ],
    ['wastedVisit', { priceMinorUnits: 80 }, { priceMinorUnits: 70, ...dated }],
    [
      'surcharges',
      { when: 'weekend', name: 'Weekend', percent: '50' },
      { when: 'weekend', name: 'Weekend', percent: '25', ...dated },
    ],
    ['holidays', { day: '2026-12-25', name: 'Christmas' }, { day: '2026-12-26', name: 'Boxing Day' }],
    [
      'lineDiscounts',
      { kind: 'parts', percent: '5', because: 'volume' },
      { kind: 'parts', percent: '10', because: 'contract', ...dated },
    ],
  ];
  test.each(kinds)(
    '%s: the payer’s entry stands after the general one, which still counts on other days',
    (kind, general, own) => {
      const card = cardOf([], { [kind]: [general] });
      const alone = card[kind] as unknown[];
      const both = laidOver(card, { [kind]: [own] })[kind] as { from?: string }[];
      expect(both.slice(0, 1)).toEqual(alone);
      expect(both).toHaveLength(2);
      expect(both[1]).toMatchObject(own);
      expect(laidOver(card, {})[kind]).toEqual(alone);
      if (kind === 'holidays') return;
      expect(validOn(both, '2026-05-31')).toEqual(alone[0]);
      expect(validOn(both, '2026-06-01')).toEqual(both[1]);
    },
  );

  test('the reason of a discount is the payer’s own, else the general one, else none', () => {
    const because = (general: object, own: object) => laidOver(cardOf([], general), own).documentDiscountBecause;
    expect(because({ documentDiscountBecause: 'fleet' }, { documentDiscountBecause: 'contract' })).toBe('contract');
    expect(because({ documentDiscountBecause: 'fleet' }, {})).toBe('fleet');
    expect('documentDiscountBecause' in laidOver(cardOf([]), {})).toBe(false);
  });
});

test('jobs at the payer’s own flat rate are counted together, whatever the general card has for their classes', () => {
  const general = cardOf([
    { visit: 'new fit', priceMinorUnits: 100 },
    { visit: 'new fit', class: 'van', priceMinorUnits: 90 },
  ]);
  const rates = laidOver(general, { flatRates: [{ visit: 'new fit', priceMinorUnits: 80 }] });
  const jobs = ['car', 'van', 'car'].map((vehicleClass, index) =>
    jobOf(`AAA${'BCD'[index]}`, { identity: { visit: 'new fit' }, vehicle: { class: vehicleClass } } as never),
  );
  expect(jobs.map((each) => orderOnDay(each, jobs, rates))).toEqual([1, 2, 3]);
});

test('a job without a flat rate, and one of another day, count for nobody’s order', () => {
  const card = cardOf([
    { visit: 'new fit', priceMinorUnits: 100 },
    { visit: 'swap', priceMinorUnits: 50 },
  ]);
  const [one, two, other, without] = [
    jobOf('BBBB', { identity: { visit: 'new fit' } } as never),
    { ...jobOf('AAAA', { identity: { visit: 'new fit' } } as never), day: '2026-06-04' },
    jobOf('AAAB', { identity: { visit: 'swap' } } as never),
    jobOf('AAAC', { identity: { visit: 'removal' } } as never),
  ];
  const all = [one, two, other, without];
  expect(all.map((each) => orderOnDay(each, all, card))).toEqual([1, 1, 1, 1]);
  const another = jobOf('ZZZZ', { identity: { visit: 'removal' } } as never);
  expect(orderOnDay(another, [...all, another], card)).toBe(1);
});
