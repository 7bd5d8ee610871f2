import fc from 'fast-check';
import { computeTotals } from '../../src/pricing/compute-totals.ts';
import { decimalText, lineAmountMinorUnits, percentOfMinorUnits } from '../../src/quantities/decimal.ts';
import type { TaxCode } from '../../src/records/book.ts';
import type { InvoiceLine, IssuedInvoice } from '../../src/records/issued-invoice.ts';

/** Two rates, one of them of three jurisdictions, and an untaxed group. */
export const taxCodes: readonly TaxCode[] = [
  {
    id: 'goods',
    name: 'Sales tax',
    category: 'S',
    jurisdictions: [
      { name: 'State', ratePercent: '2.9' },
      { name: 'County', ratePercent: '1.25' },
      { name: 'City', ratePercent: '4.725' },
    ],
  },
  { id: 'reduced', name: 'Reduced', category: 'S', jurisdictions: [{ name: 'VAT', ratePercent: '7' }] },
  { id: 'untaxed', name: 'Services', category: 'E', jurisdictions: [], reason: 'Not taxable here' },
];

const party = { name: 'Somebody', address: { lines: ['Street 1'], city: 'Town', country: 'US' } };

/** An invoice over some lines, its totals worked out by `computeTotals`. */
export function invoiceOf(
  lines: readonly InvoiceLine[],
  allowances: IssuedInvoice['allowances'] = [],
  paidMinorUnits = 0,
): IssuedInvoice {
  const { taxes, totals } = computeTotals(lines, allowances, taxCodes, paidMinorUnits);
  return {
    schema: 'keyout-invoice-1',
    type: 'invoice',
    number: 'INV-0001',
    issued: '2026-01-31',
    due: '2026-03-02',
    supplied: { from: '2026-01-05', to: '2026-01-05' },
    currency: 'USD',
    language: 'en',
    regime: 'sales tax',
    pricesIncludeTax: false,
    seller: party,
    payer: party,
    payerId: 'somebody',
    vehicles: [{ job: '2026-01-05-AAAA', day: '2026-01-05', text: 'A van' }],
    lines: [...lines],
    allowances,
    taxes,
    totals,
    payment: { reference: 'INV-0001', link: 'https://pay.example/{number}' },
  };
}

/** A line of an invoice, its amount worked out from quantity and price. */
export function lineOf(number: number, given: Partial<InvoiceLine>): InvoiceLine {
  const line = {
    number,
    kind: 'parts' as const,
    job: '2026-01-05-AAAA',
    what: `Part ${number}`,
    because: 'as agreed',
    quantity: '1',
    unit: 'each' as const,
    unitPriceMinorUnits: '1000',
    baseQuantity: '1',
    discountMinorUnits: 0,
    discountBecause: '',
    taxCode: 'goods',
    incomeAccount: '4000',
    ...given,
  };
  const amount = lineAmountMinorUnits(line.quantity, line.unitPriceMinorUnits, line.baseQuantity);
  return { ...line, netMinorUnits: amount - line.discountMinorUnits };
}

const arbitraryLine = fc.record({
  quantity: fc.integer({ min: 1, max: 90_000 }).map((hundredths) => decimalText(BigInt(hundredths) * 10_000n)),
  unitPriceMinorUnits: fc.integer({ min: 0, max: 900_000 }).map((tenths) => decimalText(BigInt(tenths) * 100_000n)),
  baseQuantity: fc.constantFrom('1', '1', '60'),
  discountPercent: fc.constantFrom('0', '0', '10', '33.333'),
  taxCode: fc.constantFrom('goods', 'reduced', 'untaxed'),
});

/** Any invoice of one to eight lines, with or without discounts and document allowances. */
export const arbitraryInvoice = fc
  .record({
    lines: fc.array(arbitraryLine, { minLength: 1, maxLength: 8 }),
    allowancePercent: fc.constantFrom('0', '3', '12.5'),
  })
  .map(({ lines: drawn, allowancePercent }) => {
    const lines = drawn.map(({ discountPercent, ...each }, place) => {
      const amount = lineAmountMinorUnits(each.quantity, each.unitPriceMinorUnits, each.baseQuantity);
      return lineOf(place + 1, { ...each, discountMinorUnits: percentOfMinorUnits(amount, discountPercent) });
    });
    const allowances = ['goods', 'reduced', 'untaxed'].flatMap((taxCode) => {
      const net = lines.filter((line) => line.taxCode === taxCode).reduce((sum, line) => sum + line.netMinorUnits, 0);
      const amountMinorUnits = percentOfMinorUnits(net, allowancePercent);
      return amountMinorUnits === 0 ? [] : [{ charge: false, because: 'as agreed', amountMinorUnits, taxCode }];
    });
    return invoiceOf(lines, allowances);
  });
