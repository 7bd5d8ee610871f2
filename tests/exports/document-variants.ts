import { readFileSync } from 'node:fs';
import type { TaxCode } from '../../src/records/book.ts';
import type { IssuedInvoice } from '../../src/records/issued-invoice.ts';
import { sampleCredit, sampleDocument, standardTax } from './sample-documents.ts';

type Moved = { charge: boolean; amount: string; vat: string; rate?: string; reason?: string };
type Example = {
  source: { path: string };
  document: string;
  currency: string;
  lines: { qty: string; price: string; baseQty?: string; vat: string; rate?: string; allowancesCharges?: Moved[] }[];
  documentAllowancesCharges?: Moved[];
  expected: Record<string, string>;
};

/** Figures of published example invoices; the file names the source of each. */
export const publishedExamples = (
  JSON.parse(readFileSync(new URL('../pricing/en16931-examples.json', import.meta.url), 'utf8')) as {
    examples: Example[];
  }
).examples;

const shifted = (text: string) => {
  const [whole = '0', rest = ''] = text.replace('-', '').split('.');
  const digits = rest.padEnd(2, '0');
  const plain = `${whole}${digits.slice(0, 2)}.${digits.slice(2)}`.replace(/\.$/, '').replace(/^0+(?=\d)/, '');
  return `${text.startsWith('-') ? '-' : ''}${plain}`;
};
const cents = (text: string) => Number(shifted(text));
const codeId = (vat: string, rate: string | undefined) => `${vat.toLowerCase()}-${Number(rate ?? 0)}`;

/** A published example as a document of ours, with the same figures. */
export function exampleDocument(example: Example): IssuedInvoice {
  const named = [...example.lines, ...(example.documentAllowancesCharges ?? [])];
  const codes = new Map(
    named.map(({ vat, rate }): [string, TaxCode] => [
      codeId(vat, rate),
      {
        id: codeId(vat, rate),
        name: vat,
        category: vat as TaxCode['category'],
        jurisdictions: vat === 'S' ? [{ name: 'VAT', ratePercent: rate ?? '0' }] : [],
        ...(vat === 'E' || vat === 'O' ? { reason: 'As the example says' } : {}),
      },
    ]),
  );
  const document = sampleDocument({
    codes: [...codes.values()],
    lines: example.lines.map((line) => ({
      quantity: line.qty,
      unitPriceMinorUnits: shifted(line.price),
      baseQuantity: line.baseQty ?? '1',
      taxCode: codeId(line.vat, line.rate),
      ...lineDiscount(line.allowancesCharges ?? []),
    })),
    allowances: (example.documentAllowancesCharges ?? []).map((each) => ({
      charge: each.charge,
      because: each.reason ?? 'As the example says',
      amountMinorUnits: cents(each.amount),
      taxCode: codeId(each.vat, each.rate),
    })),
    paidMinorUnits: cents(example.expected.prepaid ?? '0'),
    with: { currency: example.currency, regime: example.lines.some((line) => line.vat === 'O') ? 'none' : 'VAT' },
  });
  return example.document === 'CreditNote' ? sampleCredit(document) : document;
}

function lineDiscount(moved: readonly Moved[]): { discountMinorUnits?: number; discountBecause?: string } {
  const sum = moved.reduce((all, each) => all + (each.charge ? -1 : 1) * cents(each.amount), 0);
  return sum === 0 ? {} : { discountMinorUnits: sum, discountBecause: moved[0]?.reason ?? '' };
}

const exempt: TaxCode = {
  id: 'exempt',
  name: 'Exempt',
  category: 'E',
  jurisdictions: [],
  reason: 'Exempt, article 132',
};
const reverse: TaxCode = { id: 'reverse', name: 'Reverse charge', category: 'AE', jurisdictions: [] };
const salesTax: TaxCode = {
  id: 'parts',
  name: 'Sales tax on parts',
  category: 'S',
  jurisdictions: [
    { name: 'State', ratePercent: '4' },
    { name: 'County', ratePercent: '4.5' },
    { name: 'District', ratePercent: '0.375' },
  ],
};
const services: TaxCode = {
  id: 'services',
  name: 'Services, not taxed',
  category: 'E',
  jurisdictions: [],
  reason: 'Separately stated labour, not taxable here',
};
const american: Partial<IssuedInvoice> = {
  currency: 'USD',
  regime: 'sales tax',
  seller: {
    name: 'Tessmer Vehicle Fitting',
    address: { lines: ['218 Juniper Yard'], city: 'Arroyo Flats', region: 'CO', postcode: '80999', country: 'US' },
    phone: '+1 555 0142',
    taxRegistration: 'CO-SAMPLE-4471',
  },
  payer: {
    id: 'north-lattice',
    name: 'North Lattice Services Inc.',
    address: { lines: ['77 Harbor Spur, Suite 4'], city: 'Velmont', region: 'CO', postcode: '80998', country: 'US' },
    exemptionCertificate: 'EX-1',
    taxIdentifier: '00-0000000',
  },
  payment: { accountNumber: '000 123 4567', routingNumber: '000 000 000', reference: 'INV-0001' },
};
const part = { kind: 'parts', what: 'Loom kit "A" & ties', taxCode: 'parts' } as const;

/** One document for each thing that a structured file must get right. */
export const variants: Readonly<Record<string, IssuedInvoice>> = {
  'euro, two rates': sampleDocument({
    lines: [
      { quantity: '105', unit: 'minute', baseQuantity: '60', unitPriceMinorUnits: '8850' },
      { quantity: '33.33', unit: 'km', unitPriceMinorUnits: '72.5', taxCode: 'reduced' },
      { quantity: '3', unitPriceMinorUnits: '695.25', discountMinorUnits: 209, discountBecause: '10 % off' },
    ],
    allowances: [
      { charge: false, because: '5 % off', amountMinorUnits: 500, taxCode: 'standard' },
      { charge: true, because: 'Express', amountMinorUnits: 123, taxCode: 'reduced' },
    ],
    paidMinorUnits: 5000,
  }),
  'sales tax on parts only': sampleDocument({
    codes: [salesTax, services],
    lines: [
      { ...part, quantity: '3', unitPriceMinorUnits: '799' },
      { quantity: '1', unitPriceMinorUnits: '16500', taxCode: 'services' },
      { quantity: '98', unit: 'mi', unitPriceMinorUnits: '72.5', taxCode: 'services' },
    ],
    with: american,
  }),
  'sales tax, untaxed labour out of scope': sampleDocument({
    codes: [salesTax, { ...services, category: 'O' }],
    lines: [
      { ...part, quantity: '1', unitPriceMinorUnits: '695' },
      { quantity: '1', unitPriceMinorUnits: '16500', taxCode: 'services' },
    ],
    with: american,
  }),
  'sales tax, exempt payer': sampleDocument({
    codes: [{ ...services, id: 'exempt-payer', reason: 'Exempt payer' }],
    lines: [{ ...part, quantity: '1', unitPriceMinorUnits: '695', taxCode: 'exempt-payer' }],
    with: american,
  }),
  'no tax at all': sampleDocument({
    codes: [{ id: 'untaxed', name: 'No tax', category: 'O', jurisdictions: [], reason: 'Outside the scope of tax' }],
    with: { regime: 'none' },
  }),
  'reverse charge': sampleDocument({ codes: [reverse], with: { buyerReference: 'Gate 4' } }),
  exempt: sampleDocument({ codes: [exempt] }),
  'exempt beside taxed': sampleDocument({
    codes: [standardTax, exempt],
    lines: [
      { quantity: '1', unitPriceMinorUnits: '12345' },
      { quantity: '1', unitPriceMinorUnits: '333', taxCode: 'exempt' },
    ],
  }),
  'zero rate': sampleDocument({ codes: [{ ...standardTax, category: 'Z', jurisdictions: [] }] }),
  'intra-community': sampleDocument({ codes: [{ ...reverse, category: 'K' }] }),
  'export outside the EU': sampleDocument({ codes: [{ ...reverse, category: 'G' }] }),
  'two codes of one rate': sampleDocument({
    codes: [standardTax, { ...standardTax, id: 'parts' }],
    lines: [
      { quantity: '1', unitPriceMinorUnits: '5002' },
      { ...part, quantity: '1', unitPriceMinorUnits: '10002' },
    ],
  }),
  yen: sampleDocument({
    codes: [{ ...standardTax, jurisdictions: [{ name: 'Consumption tax', ratePercent: '10' }] }],
    lines: [
      { quantity: '1', unitPriceMinorUnits: '9805' },
      { quantity: '12.5', unit: 'km', unitPriceMinorUnits: '35.5' },
    ],
    with: { currency: 'JPY' },
  }),
  'yen between parties whose tax numbers carry no country': sampleDocument({
    with: {
      currency: 'JPY',
      seller: {
        name: 'Seibi Kobo',
        address: { lines: ['1-1 Kita'], city: 'Chuo', postcode: '100-0001', country: 'JP' },
        taxIdentifier: 'T0000000000000',
      },
      payer: {
        name: 'Unso Kaisha',
        address: { lines: ['2-2 Minami'], city: 'Chuo', country: 'JP' },
        taxIdentifier: 'T1111111111111',
      },
    },
  }),
  'two days, two vehicles': sampleDocument({
    with: {
      supplied: { from: '2026-11-23', to: '2026-11-24' },
      vehicles: [
        { job: '2026-11-23-7QTR', day: '2026-11-23', text: 'Truck', customer: 'Öz & Ünal', place: 'Yard 9' },
        { job: '2026-11-24-KX4D', day: '2026-11-24', text: 'Van' },
      ],
      payment: {
        reference: 'INV-0001',
        lateInterest: '1 % a month',
        terms: 'Quote the number.\n# no command\u0007',
        earlyPayment: { percent: '2', until: '2026-12-04', amountMinorUnits: 11_760 },
      },
    },
  }),
  'without anything optional': sampleDocument({
    with: {
      payer: { name: 'Bare', address: { lines: ['1'], city: 'C', country: 'FR' } },
      purchaseOrder: undefined,
      payment: { reference: 'INV-0001' },
      vehicles: [],
    },
    lines: [{ quantity: '1', unitPriceMinorUnits: '100', job: null, because: '' }],
  }),
  'negative price and negative total': sampleDocument({
    lines: [
      { quantity: '1', unitPriceMinorUnits: '-2500.5' },
      { quantity: '-2', unitPriceMinorUnits: '1000' },
    ],
  }),
  'German parties': sampleDocument({
    with: {
      buyerReference: '04011000-12345-34',
      payer: {
        name: 'Käufer GmbH',
        address: { lines: ['Straße 1', 'Hof 2', 'Tor 3'], city: 'Köln', postcode: '50667', country: 'DE' },
        electronicAddress: { scheme: '9930', identifier: 'DE987654321' },
      },
    },
  }),
  'Dutch parties': sampleDocument({
    with: {
      seller: {
        name: 'Monteur BV',
        address: { lines: ['Kade 1'], city: 'Delft', postcode: '2611', country: 'NL' },
        taxIdentifier: 'NL123456789B01',
        companyIdentifier: '12345678',
        electronicAddress: { scheme: '0106', identifier: '12345678' },
      },
      payer: {
        name: 'Koper BV',
        address: { lines: ['Kade 2'], city: 'Delft', postcode: '2611', country: 'NL' },
        companyIdentifier: '87654321',
        electronicAddress: { scheme: '0106', identifier: '87654321' },
      },
    },
  }),
  'Norwegian seller without the long VAT number': sampleDocument({
    with: {
      seller: {
        name: 'Montør AS',
        address: { lines: ['Kai 1'], city: 'Bergen', postcode: '5003', country: 'NO' },
        taxIdentifier: 'NO 999999999 MVA',
        companyIdentifier: '987654325',
        electronicAddress: { scheme: '0192', identifier: '987654325' },
      },
    },
  }),
};

/** Every document that has a structured file: the variants, the published examples, and a credit note of each. */
export const allDocuments: readonly (readonly [string, IssuedInvoice])[] = [
  ...Object.entries(variants),
  ...publishedExamples.map((example) => [example.source.path, exampleDocument(example)] as const),
].flatMap(([name, document]) =>
  document.type === 'credit note'
    ? [[name, document] as const]
    : [[name, document] as const, [`${name}, credited`, sampleCredit(document)] as const],
);
