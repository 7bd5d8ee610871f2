import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { parse } from 'csv-parse/sync';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { PayerBalance } from '../../src/pricing/aged-balances.ts';
import { callKeyout } from '../end-to-end/call-keyout.ts';
import { type Month, type MonthKind, makeMonth, valueAddedTaxMonth, writeMonth } from './make-month.ts';
import { total } from './naive-oracle.ts';
import { issueMonth, type Pair } from './run-month.ts';

const kind: MonthKind = {
  ...valueAddedTaxMonth,
  tax: { ...(valueAddedTaxMonth.tax as Record<string, unknown>), pricesInclude: true },
};
const folder = mkdtempSync(path.join(tmpdir(), 'keyout-with-tax-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
let month: Month;
let pairs: Pair[];
beforeAll(async () => {
  month = makeMonth(kind, 60, 20_261_103);
  writeMonth(folder, kind, month);
  pairs = await issueMonth(folder, month);
}, 120_000);

test('where prices hold the tax, every invoice comes to the prices agreed, to the cent', () => {
  for (const { issued, naive } of pairs) {
    const {
      netMinorUnits,
      taxMinorUnits,
      grossMinorUnits,
      roundingMinorUnits = 0,
      paidMinorUnits,
      dueMinorUnits,
    } = issued.totals;
    expect(dueMinorUnits + paidMinorUnits, issued.number).toBe(naive.net);
    expect(netMinorUnits + taxMinorUnits, issued.number).toBe(grossMinorUnits);
    expect(Math.abs(roundingMinorUnits), issued.number).toBeLessThanOrEqual(issued.taxes.length);
  }
  expect(pairs.some((each) => each.issued.totals.taxMinorUnits > 0)).toBe(true);
});

test('credited whole, in one step or two, nothing is owed, and the files agree', async () => {
  for (const [place, { issued }] of pairs.entries()) {
    const credit = (...words: string[]) =>
      callKeyout(['credit', issued.number, '--because', 'x', '--book', folder, '--today', '2026-11-30', ...words]);
    if (place % 6 === 0) expect(await credit('--line', '1:amount=7.77'), issued.number).toMatchObject({ exitCode: 0 });
    if (place % 3 === 0) expect(await credit(), issued.number).toMatchObject({ exitCode: 0 });
  }
  const credited = new Set(pairs.filter((_, place) => place % 3 === 0).map((each) => each.issued.number));
  const { out } = await callKeyout(['owed', '--day', '2026-12-31', '--json', '--book', folder]);
  const { balances } = JSON.parse(out) as { balances: PayerBalance[] };
  const deposits = (each: Pair) => each.issued.totals.paidMinorUnits;
  for (const open of balances.flatMap((each) => each.open)) {
    const pair = pairs.find((each) => each.issued.number === open.number) as Pair;
    const owed = credited.has(open.number) ? 0 : pair.naive.net;
    expect(open.balanceMinorUnits, open.number).toBe(owed - deposits(pair));
  }
  expect(total(balances.map((each) => each.totalMinorUnits))).toBe(
    total(pairs.map((each) => (credited.has(each.issued.number) ? 0 : each.naive.net) - deposits(each))),
  );
  const period = ['--from', '2026-11-01', '--to', '2026-11-30', '--out', path.join(folder, 'for the bookkeeper')];
  expect(await callKeyout(['export', '--book', folder, ...period])).toMatchObject({ exitCode: 0 });
  const controls = parse(readFileSync(path.join(folder, 'for the bookkeeper', 'control-totals.csv')), {
    columns: true,
    bom: true,
  }) as Record<string, string>[];
  expect(controls.filter((row) => row.difference !== '' && row.difference !== '0')).toEqual([]);
  expect(await callKeyout(['verify', '--book', folder])).toMatchObject({ exitCode: 0 });
}, 120_000);
