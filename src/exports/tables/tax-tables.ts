import { plainDecimal } from '../../quantities/major-units.ts';
import type { TaxGroup } from '../../records/issued-invoice.ts';
import { type ExportInput, moneyCell, periodDocuments, signed } from '../export-input.ts';
import { type Column, makeTable, type Table } from './table.ts';

type Sum = {
  readonly group: TaxGroup;
  readonly currency: string;
  readonly rate: string;
  readonly jurisdiction: string;
  readonly jurisdictionRate: string;
  readonly documents: number;
  readonly baseMinorUnits: number;
  readonly taxMinorUnits: number;
};

const shared: readonly Column<Sum>[] = [
  { name: 'currency', kind: 'text', about: 'Currency (ISO 4217).', of: ({ currency }) => currency },
  {
    name: 'category',
    kind: 'text',
    about: 'Tax category (UN/EDIFACT 5305): S, Z, E, AE, K, G or O.',
    of: ({ group }) => group.category,
  },
  { name: 'rate', kind: 'decimal', about: 'Combined rate in percent.', of: ({ rate }) => rate },
  { name: 'tax_code', kind: 'text', about: 'Tax code of the book.', of: ({ group }) => group.taxCode },
  { name: 'name', kind: 'text', about: 'Its name.', of: ({ group }) => group.name },
];

const summary: readonly Column<Sum>[] = [
  ...shared,
  { name: 'reason', kind: 'text', about: 'Why no tax is due, where none is.', of: ({ group }) => group.reason ?? null },
  { name: 'documents', kind: 'integer', about: 'How many documents have it.', of: ({ documents }) => documents },
  {
    name: 'taxable_base',
    kind: 'money',
    about: 'Amounts without tax that are taxed (category S).',
    of: ({ group, baseMinorUnits, currency }) => moneyCell(group.category === 'S' ? baseMinorUnits : 0, currency),
  },
  {
    name: 'untaxed_base',
    kind: 'money',
    about: 'Amounts without tax on which no tax is charged (every other category).',
    of: ({ group, baseMinorUnits, currency }) => moneyCell(group.category === 'S' ? 0 : baseMinorUnits, currency),
  },
  {
    name: 'tax',
    kind: 'money',
    about: 'Tax, summed from the documents as issued.',
    of: ({ taxMinorUnits, currency }) => moneyCell(taxMinorUnits, currency),
  },
];

const split: readonly Column<Sum>[] = [
  { name: 'jurisdiction', kind: 'text', about: 'Who levies this part.', of: ({ jurisdiction }) => jurisdiction },
  { name: 'jurisdiction_rate', kind: 'decimal', about: 'Its own rate in percent.', of: (sum) => sum.jurisdictionRate },
  ...shared,
  {
    name: 'base',
    kind: 'money',
    about: 'Amounts without tax; the same base stands in a row for each jurisdiction that taxes it.',
    of: ({ baseMinorUnits, currency }) => moneyCell(baseMinorUnits, currency),
  },
  {
    name: 'tax',
    kind: 'money',
    about: 'Its part of the tax; the parts of a document sum to its tax exactly.',
    of: ({ taxMinorUnits, currency }) => moneyCell(taxMinorUnits, currency),
  },
];

function summed(input: ExportInput, byJurisdiction: boolean): readonly Sum[] {
  const sums = new Map<string, Sum>();
  for (const document of periodDocuments(input))
    for (const group of document.taxes) {
      const rate = plainDecimal(group.ratePercent || '0');
      const parts = byJurisdiction
        ? group.jurisdictions.map((each) => ({
            jurisdiction: each.name,
            jurisdictionRate: plainDecimal(each.ratePercent),
            tax: each.taxMinorUnits,
          }))
        : [{ jurisdiction: '', jurisdictionRate: rate, tax: group.taxMinorUnits }];
      for (const { jurisdiction, jurisdictionRate, tax } of parts) {
        const key = [document.currency, group.category, rate, group.taxCode, jurisdiction, jurisdictionRate].join('\n');
        const before = sums.get(key);
        sums.set(key, {
          group: before?.group ?? group,
          currency: document.currency,
          rate,
          jurisdiction,
          jurisdictionRate,
          documents: (before?.documents ?? 0) + 1,
          baseMinorUnits: (before?.baseMinorUnits ?? 0) + signed(document, group.baseMinorUnits),
          taxMinorUnits: (before?.taxMinorUnits ?? 0) + signed(document, tax),
        });
      }
    }
  return [...sums.entries()].toSorted(([one], [other]) => (one < other ? -1 : 1)).map(([, sum]) => sum);
}

/** One row a tax code, category and rate. */
export function taxSummaryTable(input: ExportInput): Table {
  return makeTable(
    'tax-summary',
    'One row for each tax code, category and rate of the period; credit notes are taken off.',
    summary,
    summed(input, false),
  );
}

/** One row a jurisdiction: state, county and city rates that add up to one tax code. */
export function taxJurisdictionsTable(input: ExportInput): Table {
  return makeTable(
    'tax-jurisdictions',
    'The same tax split by who levies it; credit notes are taken off.',
    split,
    summed(input, true),
  );
}
