import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { parse } from 'csv-parse/sync';
import { Decimal } from 'decimal.js';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { callKeyout } from '../end-to-end/call-keyout.ts';
import { type Month, type MonthKind, makeMonth, salesTaxMonth, valueAddedTaxMonth, writeMonth } from './make-month.ts';
import { naiveLines, total, tripDistance, tripTime } from './naive-oracle.ts';
import { creditSome, issueMonth, type NaivePayment, naiveBalances, owedOn, type Pair, paySome } from './run-month.ts';
import { seededRandom } from './seeded-random.ts';

const root = mkdtempSync(path.join(tmpdir(), 'keyout-month-'));
afterAll(() => rmSync(root, { recursive: true, force: true }));

type Row = Record<string, string>;
const cents = (text: string | undefined): number =>
  new Decimal(text === '' || text === undefined ? 0 : text).times(100).toNumber();
const sumOf = (rows: readonly Row[], column: string): number => total(rows.map((row) => cents(row[column])));
const daysFrom = (one: string, other: string): number => (Date.parse(other) - Date.parse(one)) / 86_400_000;
const plainZero = (value: number): number => (value === 0 ? 0 : value);

const kinds: [string, MonthKind, number][] = [
  ['200 jobs under sales tax', salesTaxMonth, 200],
  ['80 jobs under value added tax', valueAddedTaxMonth, 80],
];

describe.each(kinds)('a month of %s', (_, kind, count) => {
  const folder = mkdtempSync(path.join(root, 'book-'));
  let month: Month;
  let pairs: Pair[];
  let notes: Pair[];
  let documents: Pair[];
  let payments: NaivePayment[];

  const exported = async (to: string) => {
    const out = path.join(folder, 'for the bookkeeper', to);
    expect(
      await callKeyout(['export', '--book', folder, '--from', '2026-11-01', '--to', to, '--out', out]),
    ).toMatchObject({ exitCode: 0, err: '' });
    const rows = (name: string): Row[] =>
      parse(readFileSync(path.join(out, `${name}.csv`)), { columns: true, bom: true }) as Row[];
    return { out, rows };
  };
  let november: Awaited<ReturnType<typeof exported>>;
  let untilMarch: Awaited<ReturnType<typeof exported>>;

  beforeAll(async () => {
    month = makeMonth(kind, count, 20_261_102);
    writeMonth(folder, kind, month);
    const random = seededRandom(77);
    pairs = await issueMonth(folder, month);
    notes = await creditSome(folder, month, pairs, random);
    documents = [...pairs, ...notes];
    payments = await paySome(folder, pairs, notes, random);
    november = await exported('2026-11-30');
    untilMarch = await exported('2027-02-20');
  }, 240_000);

  const signOf = (pair: Pair) => (pair.corrects === null ? 1 : -1);

  test('every job is on one invoice, some are credited whole and in part, and the book is whole', async () => {
    expect(month.jobs).toHaveLength(count);
    expect(pairs.flatMap((each) => each.issued.vehicles.map((vehicle) => vehicle.job)).sort()).toEqual(
      month.jobs.map((job) => job.id).sort(),
    );
    expect(notes.length).toBeGreaterThan(5);
    expect(payments.length).toBeGreaterThan(15);
    expect(await callKeyout(['verify', '--book', folder])).toMatchObject({ exitCode: 0 });
  });

  test('each line and total of each document is what the raw jobs come to', () => {
    for (const { issued, naive } of documents) {
      const lines = (all: readonly { job: string | null; kind: string; net: number }[]) =>
        all.map((line) => `${line.job} ${line.kind} ${line.net}`).sort();
      expect(lines(issued.lines.map((line) => ({ ...line, net: line.netMinorUnits }))), issued.number).toEqual(
        lines(naive.lines),
      );
      expect(
        {
          off: issued.totals.allowancesMinorUnits,
          net: issued.totals.netMinorUnits,
          tax: issued.totals.taxMinorUnits,
          gross: issued.totals.grossMinorUnits,
          rounding: issued.totals.roundingMinorUnits ?? 0,
          paid: issued.totals.paidMinorUnits,
          due: issued.totals.dueMinorUnits,
        },
        issued.number,
      ).toEqual({
        off: total([...naive.off.values()]),
        net: naive.net,
        tax: naive.tax,
        gross: naive.gross,
        rounding: naive.rounding,
        paid: naive.deposit,
        due: owedOn(naive) - naive.deposit,
      });
    }
  });

  test('the register holds the same, with balances, and sums to them', () => {
    const rows = november.rows('register');
    const balances = naiveBalances(pairs, notes, payments, '2026-11-30');
    expect(rows).toHaveLength(documents.length);
    for (const pair of documents) {
      const row = rows.find((each) => each.number === pair.issued.number);
      const sign = signOf(pair);
      expect([row?.net, row?.tax, row?.gross, row?.rounding, row?.balance].map(cents), pair.issued.number).toEqual(
        [
          sign * pair.naive.net,
          sign * pair.naive.tax,
          sign * pair.naive.gross,
          sign * pair.naive.rounding,
          pair.corrects === null ? (balances.get(pair.issued.number) ?? 0) : 0,
        ].map(plainZero),
      );
    }
    expect(sumOf(rows, 'balance')).toBe(total([...balances.values()]));
  });

  test('the lines sum to the raw jobs by kind, and to each document', () => {
    const rows = november.rows('lines');
    const invoices = new Set(pairs.map((each) => each.issued.number));
    for (const type of new Set(month.jobs.flatMap((job) => naiveLines(month, job)).map((line) => line.kind)))
      expect(
        sumOf(
          rows.filter((row) => row.kind === type && invoices.has(row.number ?? row.document ?? '')),
          'net',
        ),
        type,
      ).toBe(
        total(
          month.jobs
            .flatMap((job) => naiveLines(month, job))
            .filter((line) => line.kind === type)
            .map((line) => line.net),
        ),
      );
    for (const pair of documents)
      expect(
        sumOf(
          rows.filter((row) => (row.number ?? row.document) === pair.issued.number),
          'net',
        ),
        pair.issued.number,
      ).toBe(plainZero(signOf(pair) * pair.naive.net));
  });

  test('tax by code, and by who levies it, is what the documents come to', () => {
    const rows = november.rows('tax-summary');
    const taxed = documents.flatMap((pair) => pair.naive.taxes.map((tax) => ({ ...tax, sign: signOf(pair) })));
    expect(sumOf(rows, 'tax')).toBe(total(taxed.map((each) => each.sign * each.tax)));
    expect(sumOf(rows, 'taxable_base') + sumOf(rows, 'untaxed_base')).toBe(
      total(taxed.map((each) => each.sign * each.base)),
    );
    for (const code of new Set(taxed.filter((each) => each.tax !== 0).map((each) => each.code)))
      expect(
        sumOf(
          rows.filter((row) => row.tax_code === code),
          'tax',
        ),
        code,
      ).toBe(total(taxed.filter((each) => each.code === code).map((each) => each.sign * each.tax)));
    expect(sumOf(november.rows('tax-jurisdictions'), 'tax')).toBe(sumOf(rows, 'tax'));
  });

  test('payments and their parts are those made', () => {
    for (const [set, to] of [
      [november, '2026-11-30'],
      [untilMarch, '2027-02-20'],
    ] as const) {
      const made = payments.filter((each) => each.day <= to);
      const rows = set.rows('payments');
      expect(rows).toHaveLength(made.length);
      expect(sumOf(rows, 'amount')).toBe(total(made.map((each) => each.amount)));
      expect(sumOf(rows, 'rest')).toBe(
        total(made.map((each) => each.amount - total(each.parts.map((part) => part.amount)))),
      );
      expect(
        set
          .rows('payment-allocations')
          .map((row) => `${row.invoice} ${cents(row.amount)}`)
          .sort(),
      ).toEqual(made.flatMap((each) => each.parts.map((part) => `${part.invoice} ${part.amount}`)).sort());
    }
  });

  test('the aged balances, as exported and as shown, are the test’s own account on any day', async () => {
    const rows = untilMarch.rows('aged-balances');
    const buckets = ['current', 'days_1_to_30', 'days_31_to_60', 'days_61_to_90', 'days_over_90'];
    const ages = (day: string, payer: string) => {
      const sums = [0, 0, 0, 0, 0];
      for (const [number, balance] of naiveBalances(pairs, notes, payments, day)) {
        const pair = pairs.find((each) => each.issued.number === number);
        if (pair === undefined || pair.naive.payer !== payer || balance <= 0) continue;
        const late = daysFrom(pair.issued.due, day);
        const place = late <= 0 ? 0 : Math.min(4, Math.ceil(late / 30));
        sums[place] = (sums[place] ?? 0) + balance;
      }
      return sums;
    };
    for (const payer of month.payers) {
      const row = rows.find((each) => each.payer === payer.id);
      expect(
        buckets.map((name) => cents(row?.[name])),
        payer.id,
      ).toEqual(ages('2027-02-20', payer.id));
    }
    for (const day of ['2026-11-15', '2026-11-30', '2026-12-24', '2027-01-31', '2027-03-01']) {
      const { out } = await callKeyout(['owed', '--day', day, '--json', '--book', folder]);
      const { balances } = JSON.parse(out) as {
        balances: { payerId: string; buckets: Record<string, number>; totalMinorUnits: number }[];
      };
      for (const each of balances)
        expect(Object.values(each.buckets), `${each.payerId} ${day}`).toEqual(ages(day, each.payerId));
      const paid = total(payments.filter((each) => each.day <= day).map((each) => each.amount));
      const charged = documents
        .filter((each) => each.issued.issued <= day)
        .map((each) => signOf(each) * (owedOn(each.naive) - each.naive.deposit));
      expect(total(balances.map((each) => each.totalMinorUnits)), day).toBe(total(charged) - paid);
    }
  });

  test('the journal balances entry by entry, and its accounts hold the raw sums', () => {
    const rows = untilMarch.rows('journal');
    for (const entry of new Set(rows.map((row) => row.entry)))
      expect(
        sumOf(
          rows.filter((row) => row.entry === entry),
          'debit',
        ),
        entry,
      ).toBe(
        sumOf(
          rows.filter((row) => row.entry === entry),
          'credit',
        ),
      );
    const account = (number: string) => {
      const own = rows.filter((row) => row.account === number);
      return sumOf(own, 'debit') - sumOf(own, 'credit');
    };
    const balances = [...naiveBalances(pairs, notes, payments).values()];
    const rest = total(payments.map((each) => each.amount - total(each.parts.map((part) => part.amount))));
    expect(account('1000')).toBe(total(payments.map((each) => each.amount)));
    expect(account('1200')).toBe(total(balances.filter((each) => each > 0)));
    expect(account('2310')).toBe(total(balances.filter((each) => each < 0)) - rest);
    expect(account('2200')).toBe(-total(documents.map((each) => signOf(each) * each.naive.tax)));
    expect(account('4000')).toBe(-total(documents.map((each) => signOf(each) * each.naive.net)));
  });

  test('trips are those driven, and their shares sum to what each cost', () => {
    const trips = november.rows('trips');
    expect(trips.map((row) => `${row.day} ${Number(row.distance)} ${row.travel_minutes}`)).toEqual(
      month.trips.map((trip) => `${trip.day} ${Number(trip.distance)} ${trip.travelMinutes}`),
    );
    const shares = november.rows('trip-shares');
    const credited = new Set(notes.flatMap((note) => note.issued.vehicles.map((vehicle) => vehicle.job)));
    let whole = 0;
    for (const trip of month.trips.filter((each) => each.jobs.every((job) => !credited.has(job.job)))) {
      const own = shares.filter((row) => row.day === trip.day);
      expect(
        ['billed_distance', 'billed_time', 'billed_tolls_and_parking'].map((column) => sumOf(own, column)),
        trip.day,
      ).toEqual([tripDistance(trip), tripTime(trip), trip.tollsMinorUnits + trip.parkingMinorUnits]);
      whole += 1;
    }
    expect(whole).toBeGreaterThan(0);
  });

  test('the control totals agree, and the structured files and printed pages carry the same totals', () => {
    for (const set of [november, untilMarch])
      expect(set.rows('control-totals').filter((row) => row.difference !== '' && row.difference !== '0')).toEqual([]);
    const names = readdirSync(path.join(november.out, 'structured')).sort();
    expect(names).toEqual(documents.map((pair) => `${pair.issued.number}.xml`).sort());
    for (const { issued, naive } of documents) {
      const xml = readFileSync(path.join(november.out, 'structured', `${issued.number}.xml`), 'utf8');
      const of = (name: string) => cents(new RegExp(`<cbc:${name}[^>]*>([^<]*)<`).exec(xml)?.[1]);
      expect([of('TaxExclusiveAmount'), of('TaxInclusiveAmount'), of('PayableAmount')], issued.number).toEqual([
        naive.net,
        naive.gross,
        owedOn(naive) - naive.deposit,
      ]);
    }
    const printed = documents.filter(
      (pair) => pair.corrects !== null || Number(pair.issued.number.slice(-4)) % 25 === 1,
    );
    expect(printed.length).toBeGreaterThan(5);
    for (const { issued, naive } of printed.slice(0, 12)) {
      const file = path.join(folder, 'issued/2026', issued.number, 'invoice.pdf');
      const text = spawnSync('pdftotext', ['-layout', file, '-'], { encoding: 'utf8' }).stdout;
      const due = new Intl.NumberFormat('en-US', { minimumFractionDigits: 2 }).format(
        (owedOn(naive) - naive.deposit) / 100,
      );
      expect(text, issued.number).toContain(due.replace('-', ''));
    }
  });
});
