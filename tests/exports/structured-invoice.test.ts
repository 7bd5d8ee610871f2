import { describe, expect, test } from 'vitest';
import { structuredInvoice } from '../../src/exports/structured/structured-invoice.ts';
import type { TaxCode } from '../../src/records/book.ts';
import type { IssuedInvoice } from '../../src/records/issued-invoice.ts';
import { sampleDocument, standardTax } from './sample-documents.ts';

const plain = sampleDocument({});
const { taxIdentifier: _seller, ...unknownSeller } = plain.seller;
const { taxIdentifier: _payer, ...unknownPayer } = plain.payer;
const code = (category: TaxCode['category'], more: Partial<TaxCode> = {}): TaxCode => ({
  id: 'other',
  name: 'Other',
  category,
  jurisdictions: [],
  ...more,
});
const withCodes = (codes: readonly TaxCode[], given: Partial<IssuedInvoice> = {}) =>
  sampleDocument({
    codes,
    lines: codes.map((each) => ({ quantity: '1', unitPriceMinorUnits: '100', taxCode: each.id })),
    with: given,
  });

describe('what the data lack is said with file and field, and no file is made', () => {
  test.each<readonly [string, IssuedInvoice, string]>([
    ['a currency of three decimals', sampleDocument({ with: { currency: 'KWD' } }), 'book.json, currency'],
    ['no such currency', sampleDocument({ with: { currency: 'QQQ' } }), 'book.json, currency'],
    ['nothing that taxes the seller', { ...plain, seller: unknownSeller }, 'book.json, business.taxIdentifier'],
    [
      'a tax identifier without its country',
      { ...plain, seller: { ...plain.seller, taxIdentifier: '123456789' } },
      'book.json, business.taxIdentifier',
    ],
    [
      'a payer whose country does not exist',
      { ...plain, payer: { ...plain.payer, address: { ...plain.payer.address, country: 'UK' } } },
      'payers/north-lattice.json, address.country',
    ],
    [
      'an address scheme that does not exist',
      { ...plain, payer: { ...plain.payer, electronicAddress: { scheme: '0001', identifier: '1' } } },
      'payers/north-lattice.json, electronicAddress.scheme',
    ],
    [
      'reverse charge without the buyer',
      withCodes([code('AE')], { payer: unknownPayer }),
      'payers/north-lattice.json, taxIdentifier',
    ],
    [
      'intra-community supply without the buyer',
      withCodes([code('K')], { payer: unknownPayer }),
      'payers/north-lattice.json, taxIdentifier',
    ],
    ['exempt without a reason', withCodes([code('E')]), 'book.json, tax.codes "other", reason'],
    [
      'a reason code that does not exist',
      withCodes([code('E', { reasonCode: 'VATEX-EU-999' })]),
      'book.json, tax.codes "other", reasonCode',
    ],
    [
      'a reason code of another category',
      withCodes([code('E', { reasonCode: 'VATEX-EU-AE' })]),
      'book.json, tax.codes "other", reasonCode',
    ],
    [
      'an exempt code with a rate',
      withCodes([code('E', { reason: 'x', jurisdictions: [{ name: 'VAT', ratePercent: '20' }] })]),
      'book.json, tax.codes "other", category',
    ],
    [
      'out of scope beside taxed',
      withCodes([standardTax, code('O', { reason: 'x' })]),
      'book.json, tax.codes "other", category',
    ],
    [
      'a seller of whom nothing but the name is known',
      withCodes([code('O', { reason: 'x' })], { regime: 'none', seller: unknownSeller }),
      'book.json, business.companyIdentifier',
    ],
    ['sums that do not follow', { ...plain, totals: { ...plain.totals, netMinorUnits: 1 } }, 'INV-0001'],
  ])('%s', (_, document, where) => {
    const result = structuredInvoice(document);
    expect(result).toHaveProperty('lacks');
    expect('lacks' in result ? result.lacks : '').toContain(`(${where}`);
  });

  test('a whole document has its file', () => {
    expect(structuredInvoice(plain)).toHaveProperty('xml');
  });
});
