import { Decimal } from 'decimal.js';
import { expect } from 'vitest';
import { type IssuedInvoice, issuedInvoice } from '../../src/records/issued-invoice.ts';

/** What a document charges or takes off: what was paid before it was issued included. */
export const owed = (document: IssuedInvoice) => document.totals.dueMinorUnits + document.totals.paidMinorUnits;

export const total = (numbers: readonly number[]) => numbers.reduce((all, each) => all + each, 0);

const rounded = (value: Decimal) => value.toDecimalPlaces(0, Decimal.ROUND_HALF_UP).toNumber();

/**
 * A second calculation of every sum of a document that shares no code with the first: decimal.js, straight from the rules of
 * EN 16931-1 (BR-CO-10 to BR-CO-17, BR-27, BR-S-08 and their like; ROUND_HALF_UP of decimal.js is half away from zero).
 */
export function recheckDocument(document: IssuedInvoice): void {
  const { totals } = document;
  for (const line of document.lines) {
    const amount = rounded(new Decimal(line.quantity).times(line.unitPriceMinorUnits).div(line.baseQuantity));
    expect(line.netMinorUnits - (amount - line.discountMinorUnits), `line ${line.number}`).toBe(0);
    expect(Number(line.unitPriceMinorUnits)).toBeGreaterThanOrEqual(0);
  }
  const moved = (charge: boolean, taxCode?: string) =>
    total(
      document.allowances
        .filter((each) => each.charge === charge && (taxCode === undefined || each.taxCode === taxCode))
        .map((each) => each.amountMinorUnits),
    );
  const taxOf = new Map<string, { base: number; tax: number; rate: string }>();
  for (const group of document.taxes) {
    const own = document.lines.filter((line) => line.taxCode === group.taxCode).map((line) => line.netMinorUnits);
    const base = total(own) - moved(false, group.taxCode) + moved(true, group.taxCode);
    expect(group.baseMinorUnits - base, group.taxCode).toBe(0);
    expect(
      total(group.jurisdictions.map((each) => each.taxMinorUnits)) -
        (group.jurisdictions.length === 0 ? 0 : group.taxMinorUnits),
    ).toBe(0);
    const key = `${group.category} ${group.ratePercent}`;
    const sum = taxOf.get(key) ?? { base: 0, tax: 0, rate: group.ratePercent };
    taxOf.set(key, { ...sum, base: sum.base + base, tax: sum.tax + group.taxMinorUnits });
  }
  for (const [key, { base, tax, rate }] of taxOf)
    expect(tax - rounded(new Decimal(base).times(rate).div(100)), key).toBe(0);
  expect(new Set(document.taxes.map((group) => group.taxCode)).size).toBe(document.taxes.length);
  for (const each of [...document.lines, ...document.allowances])
    expect(document.taxes.map((group) => group.taxCode)).toContain(each.taxCode);
  expect(totals.linesMinorUnits).toBe(total(document.lines.map((line) => line.netMinorUnits)));
  expect(totals.allowancesMinorUnits).toBe(moved(false));
  expect(totals.chargesMinorUnits).toBe(moved(true));
  expect(totals.netMinorUnits).toBe(totals.linesMinorUnits - totals.allowancesMinorUnits + totals.chargesMinorUnits);
  expect(totals.taxMinorUnits).toBe(total(document.taxes.map((group) => group.taxMinorUnits)));
  expect(totals.grossMinorUnits).toBe(totals.netMinorUnits + totals.taxMinorUnits);
  expect(owed(document)).toBe(totals.grossMinorUnits + (totals.roundingMinorUnits ?? 0));
  expect(issuedInvoice.safeParse(document).error).toBeUndefined();
}
