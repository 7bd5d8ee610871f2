import { decimalText, millionths, percentOfMinorUnits } from '../quantities/decimal.ts';
import { shareOut } from '../quantities/share-out.ts';
import type { TaxCode } from '../records/book.ts';
import type { IssuedInvoice, TaxGroup } from '../records/issued-invoice.ts';

/**
 * The rate of a tax code, its jurisdictions added up, as decimal text.
 * @param code the tax code
 */
export function combinedRate(code: TaxCode): string {
  return decimalText(code.jurisdictions.reduce((sum, each) => sum + millionths(each.ratePercent), 0n));
}

// tax is computed on the whole base of a category and rate (BR-CO-17): what rounding each tax code by itself leaves over goes to its largest
function withRounding(group: TaxGroup, all: readonly TaxGroup[]): TaxGroup {
  const alike = all.filter(
    (each) => each.category === group.category && millionths(each.ratePercent) === millionths(group.ratePercent),
  );
  const largest = alike.reduce((one, other) =>
    Math.abs(other.baseMinorUnits) > Math.abs(one.baseMinorUnits) ? other : one,
  );
  if (alike.length === 1 || largest !== group) return group;
  const base = alike.reduce((sum, each) => sum + each.baseMinorUnits, 0);
  const over = alike.reduce((rest, each) => rest - each.taxMinorUnits, percentOfMinorUnits(base, group.ratePercent));
  if (over === 0) return group;
  const taxMinorUnits = group.taxMinorUnits + over;
  const parts = shareOut(
    taxMinorUnits,
    group.jurisdictions.map((each) => millionths(each.ratePercent)),
  );
  const jurisdictions = group.jurisdictions.map((each, index) => ({ ...each, taxMinorUnits: parts[index] ?? 0 }));
  return { ...group, taxMinorUnits, jurisdictions };
}

/**
 * Tax groups and totals of a document.
 * Source: EN 16931-1, BR-CO-10 to BR-CO-17: tax per group of one category and rate, never per line; sums of rounded amounts are not rounded again.
 * @param lines net amounts with their tax codes
 * @param allowances document allowances and charges
 * @param codes the tax codes named
 * @param paidMinorUnits paid already
 */
export function computeTotals(
  lines: readonly { readonly netMinorUnits: number; readonly taxCode: string }[],
  allowances: readonly { readonly charge: boolean; readonly amountMinorUnits: number; readonly taxCode: string }[],
  codes: readonly TaxCode[],
  paidMinorUnits: number,
): Pick<IssuedInvoice, 'taxes' | 'totals'> {
  const sum = (numbers: readonly number[]) => numbers.reduce((all, each) => all + each, 0);
  const used = codes.filter((code) => [...lines, ...allowances].some((each) => each.taxCode === code.id));
  const computed: TaxGroup[] = used.map((code) => {
    const own = lines.filter((line) => line.taxCode === code.id).map((line) => line.netMinorUnits);
    const moved = allowances
      .filter((each) => each.taxCode === code.id)
      .map((each) => (each.charge ? each.amountMinorUnits : -each.amountMinorUnits));
    const baseMinorUnits = sum(own) + sum(moved);
    const ratePercent = combinedRate(code);
    const taxMinorUnits = percentOfMinorUnits(baseMinorUnits, ratePercent);
    const parts = shareOut(
      taxMinorUnits,
      code.jurisdictions.map((each) => millionths(each.ratePercent)),
    );
    return {
      taxCode: code.id,
      name: code.name,
      category: code.category,
      ratePercent,
      jurisdictions: code.jurisdictions.map((each, index) => ({ ...each, taxMinorUnits: parts[index] ?? 0 })),
      ...(code.reason === undefined ? {} : { reason: code.reason }),
      ...(code.reasonCode === undefined ? {} : { reasonCode: code.reasonCode }),
      baseMinorUnits,
      taxMinorUnits,
    };
  });
  const taxes = computed.map((group) => withRounding(group, computed));
  const linesMinorUnits = sum(lines.map((line) => line.netMinorUnits));
  const allowancesMinorUnits = sum(allowances.filter((each) => !each.charge).map((each) => each.amountMinorUnits));
  const chargesMinorUnits = sum(allowances.filter((each) => each.charge).map((each) => each.amountMinorUnits));
  const netMinorUnits = linesMinorUnits - allowancesMinorUnits + chargesMinorUnits;
  const taxMinorUnits = sum(taxes.map((group) => group.taxMinorUnits));
  const grossMinorUnits = netMinorUnits + taxMinorUnits;
  return {
    taxes,
    totals: {
      linesMinorUnits,
      allowancesMinorUnits,
      chargesMinorUnits,
      netMinorUnits,
      taxMinorUnits,
      grossMinorUnits,
      paidMinorUnits,
      dueMinorUnits: grossMinorUnits - paidMinorUnits,
    },
  };
}
