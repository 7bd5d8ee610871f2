import { describe, expect, test } from 'vitest';
import { ciiXml } from '../../src/exports/structured/cii-xml.ts';
import { ublXml } from '../../src/exports/structured/ubl-xml.ts';
import type { IssuedInvoice } from '../../src/records/issued-invoice.ts';
import { elementsAt, everyElement, readXml, textAt } from './read-xml.ts';
import { sampleCredit, sampleDocument } from './sample-documents.ts';

const peppol = 'urn:cen.eu:en16931:2017#compliant#urn:fdc:peppol.eu:2017:poacc:billing:3.0';
const inCii = (document: IssuedInvoice, name: string) =>
  everyElement(readXml(ciiXml(document))).filter((each) => each.name === `ram:${name}`);
const iban = 'DE75 5121 0800 1245 1261 99';

// UNTDID 4461: 30 credit transfer, 58 SEPA credit transfer (euro only), 97 clearing between partners
describe('the payment means', () => {
  test.each<readonly [string, IssuedInvoice, string]>([
    ['euro to an IBAN', sampleDocument({}), '58'],
    ['dollars to an IBAN', sampleDocument({ with: { currency: 'USD' } }), '30'],
    [
      'euro to an account that is no IBAN',
      sampleDocument({ with: { payment: { accountNumber: '123-4', reference: 'INV-0001' } } }),
      '30',
    ],
    ['a credit note in euro', sampleCredit(sampleDocument({})), '97'],
  ])('%s: %#', (_, document, code) => {
    expect(textAt(readXml(ublXml(document)), 'cac:PaymentMeans/cbc:PaymentMeansCode')).toBe(code);
    const means = inCii(document, 'SpecifiedTradeSettlementPaymentMeans');
    expect(means.map((each) => textAt(each, 'ram:TypeCode'))).toEqual([code]);
  });
});

// EN 16931-1: BT-84 is one identifier; CII D16B has IBANID for an IBAN and ProprietaryID for any other, never both
test.each<readonly [string, IssuedInvoice['payment'], readonly string[]]>([
  ['an IBAN', { iban, reference: 'INV-0001' }, ['ram:IBANID DE75512108001245126199']],
  [
    'an IBAN beside a national number',
    { iban, accountNumber: '9', reference: 'INV-0001' },
    ['ram:IBANID DE75512108001245126199'],
  ],
  ['another account', { accountNumber: '123-4', reference: 'INV-0001' }, ['ram:ProprietaryID 123-4']],
])('the account stands once in the cross-industry file: %s', (_, payment, accounts) => {
  const found = inCii(sampleDocument({ with: { payment } }), 'PayeePartyCreditorFinancialAccount');
  expect(found.flatMap((each) => each.children.map((child) => `${child.name} ${child.text}`))).toEqual(accounts);
});

// UBL 2.1: an invoice has DueDate (BT-9), a credit note has none, so its date stands in the payment means
test('the due date stands in the file of a credit note as in that of an invoice', () => {
  const invoice = sampleDocument({});
  const credit = sampleCredit(invoice);
  expect(textAt(readXml(ublXml(invoice)), 'cbc:DueDate')).toBe('2026-12-24');
  expect(elementsAt(readXml(ublXml(credit)), 'cbc:DueDate')).toEqual([]);
  expect(textAt(readXml(ublXml(credit)), 'cac:PaymentMeans/cbc:PaymentDueDate')).toBe('2026-12-24');
  for (const document of [invoice, credit])
    expect(inCii(document, 'DueDateDateTime').map((each) => textAt(each, 'udt:DateTimeString'))).toEqual(['20261224']);
});

// Peppol BIS Billing 3, rule SE-R-006 (standard rates of Sweden are 6, 12 and 25 %): compared as numbers, not as text
describe('a Swedish seller is sent by Peppol at the rates of Sweden only', () => {
  const swedish = (ratePercent: string) => {
    const plain = sampleDocument({});
    return sampleDocument({
      codes: [{ id: 'standard', name: 'Moms', category: 'S', jurisdictions: [{ name: 'Moms', ratePercent }] }],
      with: {
        seller: {
          ...plain.seller,
          address: { ...plain.seller.address, country: 'SE' },
          taxIdentifier: 'SE556677889901',
          companyIdentifier: '5566778899',
          electronicAddress: { scheme: '0007', identifier: '5566778899' },
        },
      },
    });
  };
  test.each([
    ['25', true],
    ['25.0', true],
    ['25.00', true],
    ['12', true],
    ['6', true],
    ['24', false],
    ['20', false],
    ['2.5', false],
  ])('%s %%: %s', (rate, allowed) => {
    const claimed = textAt(readXml(ublXml(swedish(rate))), 'cbc:CustomizationID');
    expect(claimed === peppol).toBe(allowed);
  });
});

test('rates that are one number are one group, however they are written', () => {
  const codes = ['20', '20.0', '20.000'].map((ratePercent, index) => ({
    id: `code-${index}`,
    name: 'VAT',
    category: 'S' as const,
    jurisdictions: [{ name: 'VAT', ratePercent }],
  }));
  const totalled = sampleDocument({
    codes,
    lines: codes.map(({ id }) => ({ quantity: '1', unitPriceMinorUnits: '100', taxCode: id })),
  });
  // as a book of an earlier version may hold them
  const document = {
    ...totalled,
    taxes: totalled.taxes.map((tax, index) => ({
      ...tax,
      ratePercent: codes[index]?.jurisdictions[0]?.ratePercent ?? '',
    })),
  };
  expect(document.taxes.map((tax) => tax.ratePercent)).toEqual(['20', '20.0', '20.000']);
  for (const xml of [ublXml(document), ciiXml(document)]) {
    const groups = everyElement(readXml(xml)).filter((each) =>
      ['cac:TaxSubtotal', 'ram:ApplicableTradeTax'].includes(each.name),
    );
    const bases = groups.flatMap((each) => [textAt(each, 'cbc:TaxableAmount'), textAt(each, 'ram:BasisAmount')]);
    expect(bases.filter((each) => each !== '')).toEqual(['3.00']);
  }
});
