import { Decimal } from 'decimal.js';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ublXml } from '../../src/exports/structured/ubl-xml.ts';
import type { IssuedInvoice } from '../../src/records/issued-invoice.ts';
import { makeCreditNote } from '../pricing/worded.ts';
import { allDocuments, exampleDocument, publishedExamples, variants } from './document-variants.ts';
import { elementsAt, everyElement, type ReadElement, readXml, textAt } from './read-xml.ts';
import { sampleCredit, sampleDocument } from './sample-documents.ts';
import { checkOrder, rederive, ublFigures } from './structured-figures.ts';
import { ublElementOrder } from './ubl-element-order.ts';

const read = (name: string) => readXml(ublXml(variants[name] ?? sampleDocument({})));
describe.each(allDocuments)('%s', (_, document) => {
  test('has its elements where UBL 2.1 has them, none of them empty', () => {
    expect(readXml(ublXml(document)).name).toBe(document.type === 'credit note' ? 'CreditNote' : 'Invoice');
    checkOrder(readXml(ublXml(document)), ublElementOrder);
  });

  test('has sums that a second calculation reaches to the last digit', () => {
    rederive(ublFigures(readXml(ublXml(document))), document.currency === 'JPY' ? 0 : 2);
  });

  test('names its currency on every amount and is the same text when written again', () => {
    const amounts = everyElement(readXml(ublXml(document))).filter((each) => /Amount$/.test(each.name));
    expect(new Set(amounts.map((each) => each.attributes.currencyID))).toEqual(new Set([document.currency]));
    expect(ublXml(document)).toBe(ublXml(document));
  });
});

test.each(publishedExamples.map((example) => [example.source.path, example] as const))(
  'the totals of the published example %s stand in the file',
  (_, example) => {
    const root = readXml(ublXml(exampleDocument(example)));
    const total = (name: string) => textAt(root, `cac:LegalMonetaryTotal/cbc:${name}`);
    const cents = (text: string | undefined) => new Decimal(text ?? '').toFixed(2);
    expect(total('LineExtensionAmount')).toBe(cents(example.expected.lineTotal));
    expect(total('TaxInclusiveAmount')).toBe(cents(example.expected.taxInclusive));
    expect(total('PayableAmount')).toBe(cents(example.expected.payable));
    expect(textAt(root, 'cac:TaxTotal/cbc:TaxAmount')).toBe(cents(example.expected.taxTotal));
  },
);

describe('the tax categories', () => {
  const taxes = (root: ReadElement) =>
    elementsAt(root, 'cac:TaxTotal/cac:TaxSubtotal/cac:TaxCategory').map((each) => [
      textAt(each, 'cbc:ID'),
      textAt(each, 'cbc:Percent'),
      textAt(each, 'cbc:TaxExemptionReasonCode'),
      textAt(each, 'cbc:TaxExemptionReason'),
    ]);
  test.each([
    [
      'sales tax on parts only',
      [
        ['S', '8.875', '', ''],
        ['E', '0', '', 'Separately stated labour, not taxable here'],
      ],
    ],
    [
      'sales tax, untaxed labour out of scope',
      [
        ['S', '8.875', '', ''],
        ['E', '0', '', 'Separately stated labour, not taxable here'],
      ],
    ],
    ['no tax at all', [['O', '', '', 'Outside the scope of tax']]],
    ['reverse charge', [['AE', '0', 'VATEX-EU-AE', 'Reverse charge']]],
    ['intra-community', [['K', '0', 'VATEX-EU-IC', 'Intra-community supply']]],
    ['export outside the EU', [['G', '0', 'VATEX-EU-G', 'Export outside the EU']]],
    ['zero rate', [['Z', '0', '', '']]],
    ['two codes of one rate', [['S', '20', '', '']]],
  ])('of "%s"', (name, expected) => {
    expect(taxes(read(name))).toEqual(expected);
  });
});

describe('Peppol BIS Billing 3 is claimed where both parties can be reached by it', () => {
  const peppol = 'urn:cen.eu:en16931:2017#compliant#urn:fdc:peppol.eu:2017:poacc:billing:3.0';
  test.each([
    ['euro, two rates', true],
    ['German parties', true],
    ['Dutch parties', true],
    ['without anything optional', false],
    ['sales tax on parts only', false],
  ])('%s: %s', (name, claimed) => {
    const root = read(name);
    expect(textAt(root, 'cbc:CustomizationID')).toBe(claimed ? peppol : 'urn:cen.eu:en16931:2017');
    expect(textAt(root, 'cbc:ProfileID')).toBe(claimed ? 'urn:fdc:peppol.eu:2017:poacc:billing:01:1.0' : '');
  });

  test.each([
    ['no reference of the buyer', { purchaseOrder: undefined }],
    ['a location number whose check digit is wrong', { endpoint: { scheme: '0088', identifier: '4012345000013' } }],
    ['a scheme that only the wider list has', { endpoint: { scheme: 'EM', identifier: 'a@b.example' } }],
  ])(
    'not with %s',
    (_, { endpoint, ...given }: { purchaseOrder?: undefined; endpoint?: { scheme: string; identifier: string } }) => {
      const plain = sampleDocument({});
      const payer = endpoint === undefined ? plain.payer : { ...plain.payer, electronicAddress: endpoint };
      const root = readXml(ublXml(sampleDocument({ with: { ...given, payer } })));
      expect(textAt(root, 'cbc:CustomizationID')).toBe('urn:cen.eu:en16931:2017');
    },
  );
});

describe('credit notes of parts, as they are issued,', () => {
  test.each(Object.entries(variants))('follow the same rules: %s', (_, invoice) => {
    const earlier: IssuedInvoice[] = [];
    const first = invoice.lines.find((line) => Math.abs(line.netMinorUnits) >= 100);
    if (first === undefined) throw new Error('no line');
    for (const lines of [[{ number: first.number, amountMinorUnits: 33 }], 'all'] as const) {
      const credit = makeCreditNote({
        invoice,
        lines,
        earlier,
        number: `CRN-${earlier.length}`,
        issued: '2026-12-01',
        because: 'Too much',
      });
      earlier.push(credit);
      const root = readXml(ublXml(credit));
      checkOrder(root, ublElementOrder);
      rederive(ublFigures(root), invoice.currency === 'JPY' ? 0 : 2);
    }
  });
});

test('a credit note names its invoice and is set against it', () => {
  const root = readXml(ublXml(sampleCredit(sampleDocument({}))));
  expect(textAt(root, 'cac:BillingReference/cac:InvoiceDocumentReference/cbc:ID')).toBe('INV-0001');
  expect(textAt(root, 'cac:BillingReference/cac:InvoiceDocumentReference/cbc:IssueDate')).toBe('2026-11-24');
  expect(textAt(root, 'cac:PaymentMeans/cbc:PaymentMeansCode')).toBe('97');
  expect(textAt(root, 'cbc:CreditNoteTypeCode')).toBe('381');
});

test('a tax number without country is a registration of the seller and identifies the buyer, outside Europe', () => {
  const root = read('yen between parties whose tax numbers carry no country');
  const seller = 'cac:AccountingSupplierParty/cac:Party';
  expect(textAt(root, `${seller}/cac:PartyTaxScheme/cbc:CompanyID`)).toBe('T0000000000000');
  expect(textAt(root, `${seller}/cac:PartyTaxScheme/cac:TaxScheme/cbc:ID`)).toBe('TAX');
  expect(textAt(root, `${seller}/cac:PartyIdentification/cbc:ID`)).toBe('T0000000000000');
  expect(textAt(root, 'cac:AccountingCustomerParty/cac:Party/cac:PartyLegalEntity/cbc:CompanyID')).toBe(
    'T1111111111111',
  );
});

test('yen have no decimals, prices may', () => {
  const root = read('yen');
  expect(textAt(root, 'cac:LegalMonetaryTotal/cbc:PayableAmount')).toBe('11274');
  expect(elementsAt(root, 'cac:InvoiceLine/cac:Price/cbc:PriceAmount').map((each) => each.text)).toEqual([
    '9805',
    '444',
  ]);
  expect(elementsAt(root, 'cac:InvoiceLine/cac:Price/cbc:BaseQuantity').map((each) => each.text)).toEqual(['12.5']);
});

test('no text of a customer can break out of its element', () => {
  fc.assert(
    fc.property(
      fc.string({ unit: 'binary', minLength: 1, maxLength: 40 }).filter((text) => text.trim() !== ''),
      (text) => {
        const document = sampleDocument({});
        const line = document.lines[0];
        if (line === undefined) throw new Error('no line');
        const root = readXml(ublXml({ ...document, lines: [{ ...line, what: text }] }));
        checkOrder(root, ublElementOrder);
        const kept = text
          .replace(/\r\n?/g, '\n')
          .replace(/[^\t\n\u0020-\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]/gu, '\uFFFD')
          .trim();
        expect(textAt(root, 'cac:InvoiceLine/cac:Item/cbc:Name')).toBe(kept);
      },
    ),
  );
});
