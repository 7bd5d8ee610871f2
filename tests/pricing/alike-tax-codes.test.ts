import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { computeTotals } from '../../src/pricing/compute-totals.ts';
import { collectCodes } from '../../src/pricing/tax-codes.ts';
import { percentOfMinorUnits } from '../../src/quantities/decimal.ts';
import type { TaxCode } from '../../src/records/book.ts';
import { bookOf, code, invoice, line, taxed } from './billed.ts';

const codeOf = (id: string, rates: string[], category: TaxCode['category'] = 'S'): TaxCode => ({
  id,
  name: id,
  category,
  jurisdictions: rates.map((ratePercent, index) => ({ name: `Place ${index + 1}`, ratePercent })),
});
const on = (taxCode: string, netMinorUnits: number) => ({ taxCode, netMinorUnits });

// EN 16931-1, BR-S-08 and BR-CO-17: one base a category and rate, its tax the base times the rate, rounded once
describe('codes of one category and rate are taxed as one base', () => {
  test('what rounding each by itself leaves over goes to the largest, shared over its jurisdictions', () => {
    const codes = [codeOf('parts', ['3', '2']), codeOf('labour', ['5']), codeOf('other', ['4'])];
    const { taxes, totals } = computeTotals([on('parts', 30), on('labour', 10), on('other', 10)], [], codes, 0);
    // 5 % of 30 is 1.5 and of 10 is 0.5, each rounded up to 2 and 1; of 40 it is 2, so one cent goes from the largest
    expect(taxes.map((each) => [each.taxCode, each.baseMinorUnits, each.taxMinorUnits])).toEqual([
      ['parts', 30, 1],
      ['labour', 10, 1],
      ['other', 10, 0],
    ]);
    expect(taxes[0]?.jurisdictions).toEqual([
      { name: 'Place 1', ratePercent: '3', taxMinorUnits: 1 },
      { name: 'Place 2', ratePercent: '2', taxMinorUnits: 0 },
    ]);
    expect(totals.taxMinorUnits).toBe(2);
  });

  test('of two equally large the first, by amount and not by sign; a rate written another way is the same rate', () => {
    const codes = [codeOf('one', ['5']), codeOf('two', ['5.0'])];
    const taxOf = (one: number, two: number) =>
      computeTotals([on('one', one), on('two', two)], [], codes, 0).taxes.map((each) => each.taxMinorUnits);
    expect(taxOf(10, 10)).toEqual([0, 1]);
    expect(taxOf(10, 30)).toEqual([1, 1]);
    expect(taxOf(10, -30)).toEqual([1, -2]);
  });

  test('another category at the same rate keeps its own rounding', () => {
    const codes = [codeOf('one', ['5']), codeOf('two', ['5'], 'L' as never)];
    const { taxes } = computeTotals([on('one', 10), on('two', 10)], [], codes, 0);
    expect(taxes.map((each) => each.taxMinorUnits)).toEqual([1, 1]);
  });

  test('whatever the amounts, the tax of each rate is the rate of its whole base', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.constantFrom('a', 'b', 'c', 'd'), fc.integer({ min: -9999, max: 99_999 })), {
          maxLength: 9,
        }),
        fc.integer({ min: 0, max: 50 }),
        (lines, off) => {
          const codes = [
            codeOf('a', ['4', '3.65']),
            codeOf('b', ['7.65']),
            codeOf('c', ['20']),
            codeOf('d', ['7.650']),
          ];
          const { taxes, totals } = computeTotals(
            lines.map(([id, net]) => on(id, net)),
            [{ charge: false, amountMinorUnits: off, taxCode: 'b' }],
            codes,
            0,
          );
          for (const rate of ['7.65', '20']) {
            const own = taxes.filter((each) => Number(each.ratePercent) === Number(rate));
            const sum = (key: 'baseMinorUnits' | 'taxMinorUnits') => own.reduce((all, each) => all + each[key], 0);
            expect(sum('taxMinorUnits') - percentOfMinorUnits(sum('baseMinorUnits'), rate)).toBe(0);
          }
          for (const each of taxes)
            expect(each.jurisdictions.reduce((all, part) => all + part.taxMinorUnits, 0)).toBe(each.taxMinorUnits);
          expect(totals.grossMinorUnits).toBe(totals.netMinorUnits + totals.taxMinorUnits);
        },
      ),
      { numRuns: 200 },
    );
  });

  test('only codes that are used are named, also when only a discount names one', () => {
    const codes = [
      codeOf('one', ['5']),
      codeOf('two', ['6']),
      { ...codeOf('three', [], 'E'), reason: 'Section 5', reasonCode: 'VATEX-EU-O' },
    ];
    const { taxes } = computeTotals(
      [on('one', 10)],
      [{ charge: true, amountMinorUnits: 5, taxCode: 'three' }],
      codes,
      0,
    );
    expect(taxes.map((each) => [each.taxCode, each.reason, each.reasonCode])).toEqual([
      ['one', undefined, undefined],
      ['three', 'Section 5', 'VATEX-EU-O'],
    ]);
    expect(Object.keys(taxes[0] ?? {})).not.toContain('reason');
    expect(Object.keys(taxes[0] ?? {})).not.toContain('reasonCode');
  });
});

describe('codes of one document', () => {
  test('alike codes are one, others are named after their rate and counted', () => {
    const { add, all } = collectCodes();
    const ids = [
      add(codeOf('parts', ['7'])),
      add(codeOf('parts', ['7'])),
      add(codeOf('parts', ['8.25'])),
      add({ ...codeOf('parts', ['8.25']), name: 'New name' }),
      add({ ...codeOf('parts', ['8.25']), name: 'New name', reason: 'because' }),
      add(codeOf('parts', ['8.25'])),
      add(codeOf('parts', ['8.25'], 'AE')),
      add(codeOf('parts', ['8', '0.25'])),
    ];
    expect(ids).toEqual([
      'parts',
      'parts',
      'parts-8-25',
      'parts-8-25-2',
      'parts-8-25-3',
      'parts-8-25',
      'parts-8-25-4',
      'parts-8-25-5',
    ]);
    expect(all().map((each) => each.id)).toEqual([
      'parts',
      'parts-8-25',
      'parts-8-25-2',
      'parts-8-25-3',
      'parts-8-25-4',
      'parts-8-25-5',
    ]);
    const long = collectCodes();
    long.add(codeOf('p'.repeat(60), ['7']));
    expect(long.add(codeOf('p'.repeat(60), ['8']))).toBe(`${'p'.repeat(48)}-8`);
  });
});

describe('what the law of the place has to say', () => {
  const sales = { regime: 'sales tax' };
  const groups = (tax: object, lines: object, changed: object = {}) =>
    invoice(bookOf({ ...taxed(tax as never, lines), ...sales } as never), [line('labour', 1000)], {
      payer: changed,
    }).taxes.map(({ taxCode, name, category, reason }) => ({ taxCode, name, category, reason }));
  const plain = code('plain', 'S', ['7']);
  const certificate = 'EX-4711';

  test('a certificate takes the tax off what is taxable, and is printed as the reason', () => {
    const [only] = groups([plain], { default: 'plain' }, { exemptionCertificate: certificate });
    expect(only).toMatchObject({ taxCode: 'plain-exempt', category: 'E' });
    expect(only?.reason).toContain(certificate);
    const long = code('p'.repeat(60), 'S', ['7']);
    expect(groups([long], { default: long.id }, { exemptionCertificate: certificate })[0]?.taxCode).toBe(
      `${'p'.repeat(56)}-exempt`,
    );
  });

  test('but not where the payer has a code of its own, where nothing is taxed, or under VAT', () => {
    expect(
      groups([plain], { default: 'plain' }, { exemptionCertificate: certificate, taxCode: 'plain' })[0]?.category,
    ).toBe('S');
    const zero = code('zero', 'Z');
    expect(groups([zero], { default: 'zero' }, { exemptionCertificate: certificate })[0]).toMatchObject({
      taxCode: 'zero',
      category: 'Z',
    });
    const vat = invoice(bookOf(taxed([plain], { default: 'plain' })), [line('labour', 1000)], {
      payer: { exemptionCertificate: certificate },
    });
    expect(vat.taxes[0]).toMatchObject({ category: 'S', taxMinorUnits: 70 });
  });

  test('an exempt code keeps its reason beside the certificate, once, within 200 characters', () => {
    const reasonWith = (reason: string, own = certificate) =>
      groups([code('free', 'E', [], { reason })], { default: 'free' }, { exemptionCertificate: own })[0]?.reason ?? '';
    const alone = groups([plain], { default: 'plain' }, { exemptionCertificate: certificate })[0]?.reason;
    expect(reasonWith('Resale')).toBe(`Resale; ${alone}`);
    expect(reasonWith(`Resale under ${certificate}`)).toBe(`Resale under ${certificate}`);
    const long = reasonWith('R'.repeat(200));
    expect(long).toHaveLength(200);
    expect(long.endsWith(certificate)).toBe(true);
  });

  test('a book without tax may name its own exemption; anything else becomes no tax', () => {
    const untaxed = (id: string, category: string, more: object = {}) =>
      invoice(bookOf({ ...taxed([code(id, category, [], more)], { default: id }), regime: 'none' } as never), [
        line('labour', 1000),
      ]).taxes[0];
    expect(untaxed('small', 'E', { reason: 'Small business' })).toMatchObject({
      taxCode: 'small',
      reason: 'Small business',
    });
    expect(untaxed('outside', 'O')).toMatchObject({ taxCode: 'outside', category: 'O' });
    expect(untaxed('other', 'Z')).toMatchObject({ taxCode: 'untaxed', category: 'O' });
  });
});
