import { cpSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import type { JobInput } from '../../src/records/job.ts';
import { type SeededRandom, seededRandom } from './seeded-random.ts';

const samples = path.resolve(import.meta.dirname, '../../sample-jobs');
const signs = '23456789ABCDEFGHJKMNPQRSTVWXYZ';

/** A tax code as the oracle needs it. */
export type MonthCode = { readonly id: string; readonly category: string; readonly ratePercent: string };

export type MonthPayer = {
  readonly id: string;
  readonly termsDays: number;
  readonly perWeek: boolean;
  /** every line has this code */
  readonly taxCode: string | null;
  /** what is taxed becomes exempt */
  readonly certificate: boolean;
  readonly hourlyMinorUnits: number | null;
  readonly partsDiscountPercent: string;
  readonly documentDiscountPercent: string;
};

export type MonthTrip = {
  readonly day: string;
  readonly distance: string;
  readonly travelMinutes: number;
  readonly tollsMinorUnits: number;
  readonly parkingMinorUnits: number;
  readonly shareBy: 'equally' | 'time' | 'distance';
  readonly jobs: readonly { readonly job: string; readonly distance?: string }[];
};

export type Month = {
  readonly currency: string;
  readonly codes: readonly MonthCode[];
  readonly codeOf: Readonly<Record<string, string>>;
  readonly payers: readonly MonthPayer[];
  readonly jobs: readonly JobInput[];
  readonly trips: readonly MonthTrip[];
};

/** How a book taxes, and whom. */
export type MonthKind = {
  readonly currency: string;
  readonly tax: unknown;
  readonly codes: readonly MonthCode[];
  readonly codeOf: Readonly<Record<string, string>>;
  readonly payers: readonly MonthPayer[];
};

const plain = {
  taxCode: null,
  certificate: false,
  hourlyMinorUnits: null,
  partsDiscountPercent: '0',
  documentDiscountPercent: '0',
};

/** Sales tax on parts only, of three jurisdictions; one payer exempt by certificate. */
export const salesTaxMonth: MonthKind = {
  currency: 'USD',
  tax: undefined,
  codes: [
    { id: 'parts', category: 'S', ratePercent: '7.65' },
    { id: 'services', category: 'E', ratePercent: '0' },
  ],
  codeOf: { default: 'services', parts: 'parts' },
  payers: [
    { ...plain, id: 'first-yard', termsDays: 14, perWeek: false, partsDiscountPercent: '5' },
    { ...plain, id: 'second-yard', termsDays: 7, perWeek: true, certificate: true, hourlyMinorUnits: 7950 },
    { ...plain, id: 'third-yard', termsDays: 30, perWeek: true, documentDiscountPercent: '2.5' },
  ],
};

/** Value added tax at two rates; one payer under reverse charge. */
export const valueAddedTaxMonth: MonthKind = {
  currency: 'EUR',
  tax: {
    regime: 'VAT',
    codes: [
      { id: 'full', name: 'VAT 19 %', category: 'S', jurisdictions: [{ name: 'VAT', ratePercent: '19' }] },
      { id: 'reduced', name: 'VAT 7 %', category: 'S', jurisdictions: [{ name: 'VAT', ratePercent: '7' }] },
      { id: 'reverse', name: 'Reverse charge', category: 'AE', reason: 'Reverse charge' },
    ],
    lines: { default: 'full', 'travel distance': 'reduced', 'travel time': 'reduced', parts: 'reduced' },
  },
  codes: [
    { id: 'full', category: 'S', ratePercent: '19' },
    { id: 'reduced', category: 'S', ratePercent: '7' },
    { id: 'reverse', category: 'AE', ratePercent: '0' },
  ],
  codeOf: { default: 'full', 'travel distance': 'reduced', 'travel time': 'reduced', parts: 'reduced' },
  payers: [
    { ...plain, id: 'first-yard', termsDays: 30, perWeek: true, documentDiscountPercent: '3' },
    { ...plain, id: 'second-yard', termsDays: 14, perWeek: false, taxCode: 'reverse' },
    { ...plain, id: 'third-yard', termsDays: 0, perWeek: false, partsDiscountPercent: '7.5' },
  ],
};

/** The rate card of the month: the oracle knows its figures by itself. */
const rates = {
  schema: 'keyout-rates-1',
  flatRates: [
    {
      visit: 'new fit',
      priceMinorUnits: 14_500,
      includedMinutes: 90,
      tiers: [{ fromQuantity: 3, priceMinorUnits: 13_555 }],
    },
    { visit: 'new fit', class: 'heavy truck', priceMinorUnits: 16_500, includedMinutes: 105 },
    { visit: 'swap', priceMinorUnits: 9500, includedMinutes: 60 },
    { visit: 'removal', priceMinorUnits: 6500, includedMinutes: 45 },
  ],
  hourly: [
    { priceMinorUnits: 8800, stepMinutes: 15, rounding: 'up', minimumMinutes: 30 },
    { priceMinorUnits: 9135, stepMinutes: 6, rounding: 'nearest', minimumMinutes: 0, from: '2026-11-16' },
  ],
  waiting: [{ freeMinutes: 15, priceMinorUnits: 6000, stepMinutes: 15, rounding: 'up' }],
  callOut: [{ priceMinorUnits: 4500, visits: ['service call'] }],
  travel: [
    {
      pricePerDistanceMinorUnits: '72.5',
      unit: 'mi',
      freeDistance: '20',
      timePriceMinorUnits: 4000,
      timeStepMinutes: 15,
      timeRounding: 'nearest',
    },
  ],
  extras: [{ id: 'second-lead', name: 'Second lead', priceMinorUnits: 3333, includedMinutes: 10 }],
  parts: [{ id: 'loom-kit', name: 'Loom kit', priceMinorUnits: 695 }],
  partsMarkUpPercent: '12.5',
  wastedVisit: [{ priceMinorUnits: 7500 }],
  surcharges: [
    { name: 'Out of hours', when: 'out of hours', percent: '50' },
    { name: 'Weekend', when: 'weekend', percent: '75' },
  ],
  ordinaryHours: { start: '07:00', end: '18:00' },
};

function clock(day: string, minutes: number): string {
  return `${day}T${String(Math.trunc(minutes / 60)).padStart(2, '0')}:${String(minutes % 60).padStart(2, '0')}`;
}

function partsOf(random: SeededRandom): NonNullable<JobInput['parts']> {
  const listed = { what: 'Loom kit', quantity: String(1 + random.below(3)), part: 'loom-kit' };
  const atCost = {
    what: 'Cable',
    quantity: random.pick(['1', '2.5', '0.75', '13']),
    unit: 'metre' as const,
    unitCostMinorUnits: 37 + random.below(500),
  };
  return random.pick([[listed], [atCost], [listed, atCost], []]);
}

function makeJob(random: SeededRandom, day: string, id: string, payer: string, travels: boolean): JobInput {
  const visit = random.pick([
    'new fit',
    'new fit',
    'new fit',
    'swap',
    'removal',
    'service call',
    'wasted visit',
  ] as const);
  const start = 330 + random.below(720);
  const parts = partsOf(random);
  return {
    schema: 'keyout-job-1',
    id,
    day,
    ...(travels ? { trip: day } : {}),
    identity: {
      payer,
      visit,
      place: 'Yard',
      purchaseOrder: `PO-${100 + random.below(900)}`,
      ...(visit === 'wasted visit' ? { wastedBecause: 'Vehicle not there' } : {}),
    },
    vehicle: { plate: id.slice(-4), maker: 'Brakstad', model: 'T', class: random.pick(['van', 'heavy truck', 'car']) },
    labour: {
      start: clock(day, start),
      end: clock(day, start + 20 + random.below(220)),
      breakMinutes: random.pick([0, 0, 10]),
      waitingMinutes: random.pick([0, 0, 10, 16, 40]),
      hourlyExtras: random.chance(0.2) ? [{ what: 'Trim repaired', minutes: 5 + random.below(50) }] : [],
      extras: random.chance(0.25) ? [{ extra: 'second-lead', quantity: 1 + random.below(2) }] : [],
    },
    ...(parts.length === 0 ? {} : { parts }),
    ...(random.chance(0.1) ? { discountPercent: random.pick(['5', '12.5']), discountBecause: 'agreed' } : {}),
    ...(random.chance(0.1) ? { depositMinorUnits: 1000 + random.below(3000) } : {}),
  };
}

function makeTrip(random: SeededRandom, day: string, jobs: readonly JobInput[]): MonthTrip {
  const shareBy = random.pick(['equally', 'time', 'distance'] as const);
  return {
    day,
    distance: random.pick(['12', '64.7', '118', '203.25']),
    travelMinutes: 20 + random.below(200),
    tollsMinorUnits: random.pick([0, 725, 1299]),
    parkingMinorUnits: random.pick([0, 350]),
    shareBy,
    jobs: jobs.map((job) => ({
      job: job.id,
      ...(shareBy === 'distance' ? { distance: String(1 + random.below(60)) } : {}),
    })),
  };
}

/**
 * A month of jobs for three payers, the same for the same seed.
 * @param kind how the book taxes, and its payers
 * @param count how many jobs
 * @param seed the seed
 */
export function makeMonth(kind: MonthKind, count: number, seed: number): Month {
  const random = seededRandom(seed);
  const days = Array.from({ length: 28 }, (_, place) => `2026-11-${String(place + 2).padStart(2, '0')}`);
  const perDay = Math.ceil(count / days.length);
  const jobs: JobInput[] = [];
  const trips: MonthTrip[] = [];
  for (const day of days) {
    const travels = random.chance(0.8);
    const own = Array.from({ length: Math.min(perDay, count - jobs.length) }, (_, place) => {
      const code = `M${signs[Math.trunc((jobs.length + place) / 900)]}${signs[Math.trunc((jobs.length + place) / 30) % 30]}${signs[(jobs.length + place) % 30]}`;
      return makeJob(random, day, `${day}-${code}`, random.pick(kind.payers).id, travels);
    });
    jobs.push(...own);
    if (travels && own.length > 0) trips.push(makeTrip(random, day, own));
  }
  const { currency, codes, codeOf, payers } = kind;
  return { currency, codes, codeOf, payers, jobs, trips };
}

/**
 * Writes a month's book as a person would have: nothing in it is computed.
 * @param folder where the book is made
 * @param kind how it taxes
 * @param month its jobs and trips
 */
export function writeMonth(folder: string, kind: MonthKind, month: Month): void {
  cpSync(samples, folder, { recursive: true });
  for (const room of ['jobs', 'trips', 'payers']) rmSync(path.join(folder, room), { recursive: true, force: true });
  const write = (place: string, value: unknown) => {
    mkdirSync(path.dirname(path.join(folder, place)), { recursive: true });
    writeFileSync(path.join(folder, place), JSON.stringify(value, null, 2));
  };
  const book = JSON.parse(readFileSync(path.join(samples, 'book.json'), 'utf8')) as Record<string, unknown> & {
    business: Record<string, unknown>;
  };
  const business = kind.tax === undefined ? book.business : { ...book.business, taxIdentifier: 'DE123456789' };
  write('book.json', {
    ...book,
    business,
    currency: kind.currency,
    ...(kind.tax === undefined ? {} : { tax: kind.tax }),
  });
  write('rates.json', rates);
  for (const payer of kind.payers) write(`payers/${payer.id}.json`, payerRecord(kind, payer));
  for (const job of month.jobs) write(`jobs/2026/${job.id}.json`, job);
  for (const trip of month.trips) write(`trips/${trip.day}.json`, { schema: 'keyout-trip-1', unit: 'mi', ...trip });
}

function payerRecord(kind: MonthKind, payer: MonthPayer): unknown {
  return {
    schema: 'keyout-payer-1',
    id: payer.id,
    name: `The ${payer.id.replace('-', ' ')}`,
    address: { lines: ['Yard Road 1'], city: 'Velmont', country: kind.tax === undefined ? 'US' : 'DE' },
    termsDays: payer.termsDays,
    invoicePer: payer.perWeek ? 'payer' : 'vehicle',
    ...(payer.taxCode === null ? {} : { taxCode: payer.taxCode, taxIdentifier: 'DE987654321' }),
    ...(payer.certificate ? { exemptionCertificate: 'EX-1' } : {}),
    rates: {
      ...(payer.hourlyMinorUnits === null
        ? {}
        : { hourly: [{ priceMinorUnits: payer.hourlyMinorUnits, stepMinutes: 15, rounding: 'up' }] }),
      ...(payer.partsDiscountPercent === '0'
        ? {}
        : { lineDiscounts: [{ kind: 'parts', percent: payer.partsDiscountPercent, because: 'agreed' }] }),
      ...(payer.documentDiscountPercent === '0' ? {} : { documentDiscountPercent: payer.documentDiscountPercent }),
    },
  };
}
