import { describe, expect, test } from 'vitest';
import { ciiXml } from '../../src/exports/structured/cii-xml.ts';
import { ublXml } from '../../src/exports/structured/ubl-xml.ts';
import { ciiElementOrder } from './cii-element-order.ts';
import { allDocuments, variants } from './document-variants.ts';
import { elementsAt, everyElement, readXml, textAt } from './read-xml.ts';
import { sampleDocument } from './sample-documents.ts';
import { checkOrder, ciiFigures, rederive, ublFigures } from './structured-figures.ts';

describe.each(allDocuments)('%s', (_, document) => {
  test('has its elements where D16B has them, none of them empty', () => {
    expect(readXml(ciiXml(document)).name).toBe('rsm:CrossIndustryInvoice');
    checkOrder(readXml(ciiXml(document)), ciiElementOrder, (name) => name.replace(/^\w+:/, ''));
  });

  test('says the same figures as the UBL file, and a second calculation reaches them to the last digit', () => {
    const figures = ciiFigures(readXml(ciiXml(document)));
    expect(figures).toEqual(ublFigures(readXml(ublXml(document))));
    rederive(figures, document.currency === 'JPY' ? 0 : 2);
  });

  test('is the same text when written again, names the profile and the kind of document', () => {
    expect(ciiXml(document)).toBe(ciiXml(document));
    expect(everyElement(readXml(ciiXml(document))).find((each) => each.name === 'ram:ID')?.text).toBe(
      'urn:cen.eu:en16931:2017',
    );
    expect(textAt(readXml(ciiXml(document)), 'rsm:ExchangedDocument/ram:TypeCode')).toBe(
      document.type === 'invoice' ? '380' : '381',
    );
  });
});

test('days are written without hyphens, in format 102', () => {
  const root = readXml(ciiXml(variants['two days, two vehicles'] ?? sampleDocument({})));
  const days = everyElement(root).filter((each) => each.name.endsWith(':DateTimeString'));
  expect(new Set(days.map((each) => each.attributes.format))).toEqual(new Set(['102']));
  expect(new Set(days.map((each) => each.text))).toEqual(new Set(['20261123', '20261124', '20261224']));
});

test('tax registrations carry their kind: VA for the VAT identifier, FC for any other', () => {
  const read = (name: string) =>
    elementsAt(
      readXml(ciiXml(variants[name] ?? sampleDocument({}))),
      'rsm:SupplyChainTradeTransaction/ram:ApplicableHeaderTradeAgreement/ram:SellerTradeParty/ram:SpecifiedTaxRegistration/ram:ID',
    ).map((each) => [each.attributes.schemeID, each.text]);
  expect(read('reverse charge')).toEqual([['VA', 'DE123456789']]);
  expect(read('sales tax on parts only')).toEqual([['FC', 'CO-SAMPLE-4471']]);
});
