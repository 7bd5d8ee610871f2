import { Problem } from '../../problem.ts';
import { millionths, percentOfMinorUnits } from '../../quantities/decimal.ts';
import { plainDecimal } from '../../quantities/major-units.ts';
import type { IssuedInvoice, TaxGroup } from '../../records/issued-invoice.ts';
import { exemptionCodes } from './code-lists.ts';
import type { SemanticTax } from './semantic-invoice.ts';

/** A tax breakdown of the structured file: one a category and rate, however many tax codes share it. */
export type MergedGroup = {
  readonly tax: SemanticTax;
  readonly baseMinorUnits: number;
  readonly taxMinorUnits: number;
  readonly reason?: string;
  readonly reasonCode?: string;
};

// VATEX codes that belong to one category only (PEPPOL-EN16931-P0104 to P0111)
const categoryOfCode: Readonly<Record<string, string>> = {
  'VATEX-EU-G': 'G',
  'VATEX-EU-O': 'O',
  'VATEX-EU-IC': 'K',
  'VATEX-EU-AE': 'AE',
  'VATEX-EU-D': 'E',
  'VATEX-EU-F': 'E',
  'VATEX-EU-I': 'E',
  'VATEX-EU-J': 'E',
};

// what a category means by itself, where the book gives no words for it (BR-AE-10, BR-IC-10, BR-G-10, BR-O-10)
const ownReason: Readonly<Record<string, { readonly reasonCode: string; readonly reason: string }>> = {
  AE: { reasonCode: 'VATEX-EU-AE', reason: 'Reverse charge' },
  K: { reasonCode: 'VATEX-EU-IC', reason: 'Intra-community supply' },
  G: { reasonCode: 'VATEX-EU-G', reason: 'Export outside the EU' },
  O: { reasonCode: 'VATEX-EU-O', reason: 'Not subject to VAT' },
};

const at = (group: TaxGroup, field: string) => `book.json, tax.codes "${group.taxCode}", ${field}`;

/**
 * The category and rate of a tax code in the structured file.
 * S at zero percent is Z (BR-S-05). Under sales tax, where the VAT categories only stand in, O beside other categories is E (BR-O-11).
 * @param group the document's own group of that code
 * @param invoice the document
 * @throws Problem when the standard has no place for it
 */
export function semanticTax(group: TaxGroup, invoice: IssuedInvoice): SemanticTax {
  const rate = plainDecimal(group.ratePercent);
  const zero = millionths(group.ratePercent) === 0n;
  if (group.category === 'S') return zero ? { category: 'Z', rate } : { category: 'S', rate };
  if (!zero)
    throw new Problem(
      `A tax of category ${group.category} has the rate ${rate} %; only category S has one.`,
      at(group, 'category'),
      'Use category S, or take its jurisdictions away.',
    );
  if (group.category !== 'O') return { category: group.category, rate: '0' };
  if (invoice.taxes.every((each) => each.category === 'O')) return { category: 'O' };
  if (invoice.regime === 'sales tax') return { category: 'E', rate: '0' };
  throw new Problem(
    'Category O (outside the scope of tax) cannot stand beside other categories on one structured invoice.',
    at(group, 'category'),
    'Use category E with a reason for it, or bill those lines on an invoice of their own.',
  );
}

function reasonCodeOf(group: TaxGroup, category: string): string | undefined {
  const code = group.reasonCode?.toUpperCase();
  if (code === undefined) return undefined;
  if (!exemptionCodes.has(code))
    throw new Problem(
      `"${group.reasonCode}" is not a code of the VATEX list.`,
      at(group, 'reasonCode'),
      'Use a code such as "VATEX-EU-AE", or take the code away and keep the reason.',
    );
  if (categoryOfCode[code] !== undefined && categoryOfCode[code] !== category)
    throw new Problem(
      `${code} belongs to category ${categoryOfCode[code]}, the tax code has ${category}.`,
      at(group, 'reasonCode'),
      'Give the tax code the category that its reason means.',
    );
  return code;
}

function joined(words: readonly (string | undefined)[]): string | undefined {
  const given = [...new Set(words.filter((word) => word !== undefined))];
  return given.length === 0 ? undefined : given.join('; ');
}

/**
 * The tax breakdown: tax codes of one category and rate are one group (BR-S-08, BR-E-01 and their like).
 * @param invoice the document
 * @throws Problem when a reason is missing, or the tax of merged codes was not computed on their sum
 */
export function mergedGroups(invoice: IssuedInvoice): readonly MergedGroup[] {
  const merged = new Map<string, { readonly tax: SemanticTax; readonly groups: TaxGroup[] }>();
  for (const group of invoice.taxes) {
    const tax = semanticTax(group, invoice);
    const key = `${tax.category} ${tax.rate ?? ''}`;
    const entry = merged.get(key) ?? { tax, groups: [] };
    entry.groups.push(group);
    merged.set(key, entry);
  }
  return [...merged.values()].map(({ tax, groups }) => {
    const baseMinorUnits = groups.reduce((sum, group) => sum + group.baseMinorUnits, 0);
    const taxMinorUnits = groups.reduce((sum, group) => sum + group.taxMinorUnits, 0);
    if (taxMinorUnits !== percentOfMinorUnits(baseMinorUnits, tax.rate ?? '0'))
      throw new Problem(
        `The tax at ${tax.rate ?? 0} % was not computed on the whole of its base.`,
        `${invoice.number}, taxes ${groups.map((group) => `"${group.taxCode}"`).join(', ')}`,
        'Give lines of one category and rate one tax code.',
      );
    return { tax, baseMinorUnits, taxMinorUnits, ...reasonOf(tax.category, groups) };
  });
}

function reasonOf(category: string, groups: readonly TaxGroup[]): { reason?: string; reasonCode?: string } {
  if (category === 'S' || category === 'Z') return {};
  const codes = new Set(groups.map((group) => reasonCodeOf(group, category)));
  const own = ownReason[category];
  const reason = joined(groups.map((group) => group.reason));
  const only = codes.size === 1 ? [...codes][0] : undefined;
  // AE, K and G mean one thing whatever the words; O and E get a code only where the book names it or has no words
  const reasonCode = only ?? (reason === undefined || category !== 'O' ? own?.reasonCode : undefined);
  const words = reason ?? own?.reason;
  const first = groups[0];
  if (reasonCode === undefined && words === undefined && first !== undefined)
    throw new Problem(
      `Tax category ${category} needs a reason.`,
      at(first, 'reason'),
      'Write the reason as it should be printed.',
    );
  return {
    ...(words === undefined ? {} : { reason: words }),
    ...(reasonCode === undefined ? {} : { reasonCode }),
  };
}
