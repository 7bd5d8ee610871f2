import { computeTotals } from '../../src/pricing/compute-totals.ts';
import { lineAmountMinorUnits } from '../../src/quantities/decimal.ts';
import type { TaxCode } from '../../src/records/book.ts';
import { type InvoiceLine, type IssuedInvoice, issuedInvoice } from '../../src/records/issued-invoice.ts';

export const standardTax: TaxCode = {
  id: 'standard',
  name: 'VAT 20 %',
  category: 'S',
  jurisdictions: [{ name: 'VAT', ratePercent: '20' }],
};
export const reducedTax: TaxCode = {
  id: 'reduced',
  name: 'VAT 5.5 %',
  category: 'S',
  jurisdictions: [{ name: 'VAT', ratePercent: '5.5' }],
};

export type SampleLine = Partial<InvoiceLine> & Pick<InvoiceLine, 'quantity' | 'unitPriceMinorUnits'>;

/** A document of invented parties, priced and totalled by the pricing room, in euro unless told otherwise. */
export function sampleDocument(given: {
  readonly lines?: readonly SampleLine[];
  readonly codes?: readonly TaxCode[];
  readonly allowances?: IssuedInvoice['allowances'];
  readonly paidMinorUnits?: number;
  readonly with?: Partial<IssuedInvoice>;
}): IssuedInvoice {
  const codes = given.codes ?? [standardTax, reducedTax];
  const job = '2026-11-24-KX4D';
  const lines: InvoiceLine[] = (given.lines ?? [{ quantity: '1', unitPriceMinorUnits: '10000' }]).map(
    (line, place) => ({
      number: place + 1,
      kind: 'flat rate',
      job,
      what: 'New fit',
      because: 'flat rate',
      unit: 'each',
      baseQuantity: '1',
      discountMinorUnits: 0,
      discountBecause: '',
      taxCode: codes[0]?.id ?? '',
      incomeAccount: '4000',
      netMinorUnits:
        lineAmountMinorUnits(line.quantity, line.unitPriceMinorUnits, line.baseQuantity ?? '1') -
        (line.discountMinorUnits ?? 0),
      ...line,
    }),
  );
  const allowances = given.allowances ?? [];
  const number = given.with?.number ?? 'INV-0001';
  return issuedInvoice.parse({
    schema: 'keyout-invoice-1',
    type: 'invoice',
    number,
    issued: '2026-11-24',
    due: '2026-12-24',
    supplied: { from: '2026-11-24', to: '2026-11-24' },
    currency: 'EUR',
    language: 'en',
    regime: 'VAT',
    pricesIncludeTax: false,
    seller: {
      name: 'Tessmer Vehicle Fitting',
      address: { lines: ['218 Juniper Yard'], city: 'Sampleville', postcode: '10115', country: 'DE' },
      phone: '+49 30 0000 000',
      email: 'office@tessmer-fitting.example',
      taxIdentifier: 'DE123456789',
      electronicAddress: { scheme: '9930', identifier: 'DE123456789' },
    },
    payer: {
      id: 'north-lattice',
      name: 'North Lattice <Services> & Sons',
      address: { lines: ['77 Harbor Spur', 'Suite 4'], city: 'Velmont', postcode: '1010', country: 'AT' },
      contact: 'Accounts payable',
      email: 'ap@north-lattice.example',
      taxIdentifier: 'ATU12345678',
      electronicAddress: { scheme: '9915', identifier: 'ATU12345678' },
    },
    payerId: 'north-lattice',
    purchaseOrder: 'PO 4711',
    vehicles: [{ job, day: '2026-11-24', text: 'Van, plate TEST 1' }],
    lines,
    allowances,
    ...computeTotals(lines, allowances, codes, given.paidMinorUnits ?? 0),
    payment: { accountName: 'Tessmer Vehicle Fitting', iban: 'DE75 5121 0800 1245 1261 99', reference: number },
    ...given.with,
  });
}

/** The credit note of some lines of a document, as whole as the document itself. */
export function sampleCredit(original: IssuedInvoice, given: Partial<IssuedInvoice> = {}): IssuedInvoice {
  const number = given.number ?? 'CRN-0001';
  return issuedInvoice.parse({
    ...original,
    type: 'credit note',
    number,
    totals: { ...original.totals, paidMinorUnits: 0, dueMinorUnits: original.totals.grossMinorUnits },
    payment: { ...original.payment, reference: number },
    corrects: {
      number: original.number,
      issued: original.issued,
      lines: original.lines.map((line) => line.number),
      because: 'Charged by mistake',
    },
    ...given,
  });
}
