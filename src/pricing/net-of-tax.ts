import { decimalScale, lineAmountMinorUnits, millionths } from '../quantities/decimal.ts';
import { divideRounded } from '../quantities/divide-rounded.ts';
import { priceForAmount } from '../quantities/price-for-amount.ts';
import { shareOut } from '../quantities/share-out.ts';
import type { TaxCode } from '../records/book.ts';
import type { InvoiceLine, IssuedInvoice } from '../records/issued-invoice.ts';
import { combinedRate } from './compute-totals.ts';

type Allowance = IssuedInvoice['allowances'][number];

const sum = (numbers: readonly number[]) => numbers.reduce((all, each) => all + each, 0);

function without(amountMinorUnits: number, ratePercent: string): number {
  const whole = 100n * decimalScale;
  return Number(divideRounded(BigInt(amountMinorUnits) * whole, whole + millionths(ratePercent)));
}

function netLine(line: InvoiceLine, netMinorUnits: number, ratePercent: string): InvoiceLine {
  const discountMinorUnits = without(line.discountMinorUnits, ratePercent);
  const amount = netMinorUnits + discountMinorUnits;
  const includingTax = {
    unitPriceMinorUnits: line.unitPriceMinorUnits,
    discountMinorUnits: line.discountMinorUnits,
    amountMinorUnits: line.netMinorUnits,
  };
  const shared = { ...line, netMinorUnits, discountMinorUnits, includingTax };
  const given = lineAmountMinorUnits(line.quantity, line.unitPriceMinorUnits, line.baseQuantity);
  if (given === amount) return shared;
  const price = priceForAmount(amount, line.quantity, line.baseQuantity);
  if (price !== null) return { ...shared, unitPriceMinorUnits: price };
  return { ...shared, quantity: '1', baseQuantity: '1', unit: 'each', unitPriceMinorUnits: String(amount) };
}

/**
 * Lines and allowances priced with tax, taken apart so that the document obeys EN 16931-1, which knows net prices only.
 * For each category and rate the net base is the gross sum less its tax, rounded once, and shared over the lines by
 * largest remainder; a line's net price then has as many decimals as its amount needs. Some gross sums are no whole
 * base with its rounded tax (1.03 at 19 %: 0.86 and 0.16, or 0.87 and 0.17): the cent that is missing is the rounding
 * amount (BT-114, BR-CO-16), so that the payer owes exactly the prices agreed, and every other figure obeys BR-CO-17.
 * @param lines lines with gross amounts
 * @param allowances document discounts, gross
 * @param codes the tax codes that they name
 */
export function netOfTax(
  lines: readonly InvoiceLine[],
  allowances: readonly Allowance[],
  codes: readonly TaxCode[],
): {
  readonly lines: readonly InvoiceLine[];
  readonly allowances: readonly Allowance[];
  readonly grossMinorUnits: number;
} {
  const rates = new Map(codes.map((code) => [code.id, combinedRate(code)]));
  const groupOf = new Map(codes.map((code) => [code.id, `${code.category} ${combinedRate(code)}`]));
  const netLines = new Map<InvoiceLine, InvoiceLine>();
  const signed = (each: Allowance) => (each.charge ? -each.amountMinorUnits : each.amountMinorUnits);
  const netAllowances = allowances.map((each) => ({
    ...each,
    amountMinorUnits: without(each.amountMinorUnits, rates.get(each.taxCode) ?? '0'),
  }));
  for (const group of new Set(groupOf.values())) {
    const own = lines.filter((line) => groupOf.get(line.taxCode) === group);
    const rate = rates.get(own[0]?.taxCode ?? '') ?? '0';
    const inGroup = (each: Allowance) => groupOf.get(each.taxCode) === group;
    const gross = sum(own.map((line) => line.netMinorUnits)) - sum(allowances.filter(inGroup).map(signed));
    const total = without(gross, rate) + sum(netAllowances.filter(inGroup).map(signed));
    const shares = shareOut(
      total,
      own.map((line) => BigInt(Math.max(0, line.netMinorUnits))),
    );
    for (const [index, line] of own.entries()) netLines.set(line, netLine(line, shares[index] ?? 0, rate));
  }
  return {
    lines: lines.map((line) => netLines.get(line) ?? line),
    allowances: netAllowances,
    grossMinorUnits: sum(lines.map((line) => line.netMinorUnits)) - sum(allowances.map(signed)),
  };
}
