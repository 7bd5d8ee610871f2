import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { computeTotals } from '../../src/pricing/compute-totals.ts';
import { lineAmountMinorUnits } from '../../src/quantities/decimal.ts';
import type { TaxCode } from '../../src/records/book.ts';

// Source: published example invoices of EN 16931-1 (ConnectingEurope/eInvoicing-EN16931 and OpenPEPPOL/peppol-bis-invoice-3); each names its file.
type Moved = { charge: boolean; amount: string; vat: string; rate?: string };
type Example = {
  source: { repository: string; path: string };
  lines: {
    qty: string;
    price: string;
    baseQty?: string;
    vat: string;
    rate?: string;
    net: string;
    allowancesCharges?: Moved[];
  }[];
  documentAllowancesCharges?: Moved[];
  expected: Record<string, string> & { vat: { vat: string; rate?: string; taxable: string; tax: string }[] };
};
const { examples } = JSON.parse(readFileSync(new URL('./en16931-examples.json', import.meta.url), 'utf8')) as {
  examples: Example[];
};

// two decimals, as text, without floating point
const cents = (text: string) => {
  const negative = text.startsWith('-');
  const [whole = '0', rest = ''] = text.replace('-', '').split('.');
  return (negative ? -1 : 1) * (Number(whole) * 100 + Number(rest.padEnd(2, '0').slice(0, 2)));
};
const inCents = (price: string) => {
  const [whole = '0', rest = ''] = price.split('.');
  const digits = rest.padEnd(2, '0');
  return `${whole}${digits.slice(0, 2)}${digits.length > 2 ? `.${digits.slice(2)}` : ''}`.replace(/^0+(?=\d)/, '');
};
const code = (vat: string, rate: string | undefined) => `${vat} ${Number(rate ?? '0')}`;

describe('the published example invoices recompute to the cent', () => {
  test('nine examples are there', () => {
    expect(examples).toHaveLength(9);
  });

  test.each(examples.map((example) => [example.source.path, example] as const))('%s', (_, example) => {
    const lines = example.lines.map((line) => {
      const moved = (line.allowancesCharges ?? []).reduce(
        (sum, each) => sum + (each.charge ? 1 : -1) * cents(each.amount),
        0,
      );
      const netMinorUnits = lineAmountMinorUnits(line.qty, inCents(line.price), line.baseQty ?? '1') + moved;
      expect(netMinorUnits, line.net).toBe(cents(line.net));
      return { netMinorUnits, taxCode: code(line.vat, line.rate) };
    });
    const allowances = (example.documentAllowancesCharges ?? []).map((each) => ({
      charge: each.charge,
      amountMinorUnits: cents(each.amount),
      taxCode: code(each.vat, each.rate),
    }));
    const codes = [...new Set(lines.map((line) => line.taxCode))].map(
      (id): TaxCode => ({
        id,
        name: id,
        category: id.split(' ')[0] as TaxCode['category'],
        jurisdictions: [{ name: 'VAT', ratePercent: id.split(' ')[1] ?? '0' }],
      }),
    );
    const { taxes, totals } = computeTotals(lines, allowances, codes, cents(example.expected.prepaid ?? '0'));
    for (const group of example.expected.vat) {
      const own = taxes.find((each) => each.taxCode === code(group.vat, group.rate));
      expect(own?.baseMinorUnits).toBe(cents(group.taxable));
      expect(own?.taxMinorUnits).toBe(cents(group.tax));
    }
    expect(totals.linesMinorUnits).toBe(cents(example.expected.lineTotal ?? ''));
    expect(totals.netMinorUnits).toBe(cents(example.expected.taxExclusive ?? ''));
    expect(totals.taxMinorUnits).toBe(cents(example.expected.taxTotal ?? ''));
    expect(totals.grossMinorUnits).toBe(cents(example.expected.taxInclusive ?? ''));
    expect(totals.dueMinorUnits).toBe(cents(example.expected.payable ?? ''));
  });
});
