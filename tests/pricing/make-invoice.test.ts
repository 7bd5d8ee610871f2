import { describe, expect, test } from 'vitest';
import { writeMoney } from '../../src/quantities/write-money.ts';
import type { Job } from '../../src/records/job.ts';
import { soundPayer } from '../../src/rules/sound-job.ts';
import { bookOf, code, invoice, jobOf, line, sound, taxed } from './billed.ts';
import { recheckDocument } from './recheck-document.ts';
import { makeInvoice } from './worded.ts';

describe('sales tax', () => {
  const salesTax = bookOf(
    taxed(
      [
        code('parts', 'S', ['2.9', '1.25', '4.725']),
        code('services', 'E', [], { reason: 'Labour apart is not taxed' }),
      ],
      { default: 'services', parts: 'parts' },
      { regime: 'sales tax' },
    ),
  );

  test('is on the kinds of line that the book taxes, at the rates of its jurisdictions together, and each gets its part', () => {
    const made = invoice(salesTax, [line('flat rate', 14_500), line('parts', 695), line('parts', 480, '2')]);
    recheckDocument(made);
    // 8.875 % of 16.55 = 1.4688; 2.9, 1.25 and 4.725 of 8.875 parts of 147 cents = 48.03, 20.70, 78.26
    expect(
      made.taxes.map((group) => [group.taxCode, group.ratePercent, group.baseMinorUnits, group.taxMinorUnits]),
    ).toEqual([
      ['services', '0', 14_500, 0],
      ['parts', '8.875', 1655, 147],
    ]);
    expect(made.taxes[1]?.jurisdictions.map((each) => each.taxMinorUnits)).toEqual([48, 21, 78]);
  });

  test('is not charged to a payer with a certificate, whose number is the reason', () => {
    const made = invoice(salesTax, [line('flat rate', 14_500), line('parts', 695)], {
      payer: { exemptionCertificate: 'EX-77' },
    });
    recheckDocument(made);
    expect(made.totals.taxMinorUnits).toBe(0);
    expect(made.payer.exemptionCertificate).toBe('EX-77');
    expect(made.taxes.map((group) => [group.category, group.reason])).toEqual([
      ['E', 'Labour apart is not taxed; Exemption certificate EX-77'],
      ['E', 'Exemption certificate EX-77'],
    ]);
  });

  test('of a payer with a code of its own is that code’s, on every line', () => {
    const made = invoice(salesTax, [line('flat rate', 14_500), line('parts', 695)], {
      payer: { taxCode: 'services', exemptionCertificate: 'EX-77' },
    });
    expect(made.taxes.map((group) => group.baseMinorUnits)).toEqual([15_195]);
    expect(() => invoice(salesTax, [line('parts', 695)], { payer: { taxCode: 'nowhere' } })).toThrow(
      /"nowhere" is none of the book's.*payers\/example-payer\.json, taxCode/,
    );
  });
});

describe('value added tax', () => {
  test.each([
    ['AE', 'Reverse charge'],
    ['K', 'Intra-community supply'],
    ['G', 'Export outside the EU'],
    ['O', 'Outside the scope of tax'],
    ['Z', undefined],
  ])('category %s is without tax and prints the reason that it needs', (category, reason) => {
    const made = invoice(bookOf(taxed([code('own', category)], { default: 'own' })), [line('labour', 10_000)], {
      payer: { taxIdentifier: 'XX123' },
    });
    recheckDocument(made);
    expect(made.taxes).toEqual([
      {
        taxCode: 'own',
        name: 'own',
        category,
        ratePercent: '0',
        jurisdictions: [],
        ...(reason === undefined ? {} : { reason }),
        baseMinorUnits: 10_000,
        taxMinorUnits: 0,
      },
    ]);
  });

  test('the small-business note is the reason of an exempt code; an exempt code without one is refused', () => {
    const note = 'No VAT is charged: small business';
    const owner = bookOf(taxed([code('small', 'E', [], { reason: note })], { default: 'small' }));
    expect(invoice(owner, [line('labour', 10_000)]).taxes[0]?.reason).toBe(note);
    const silent = bookOf(taxed([code('small', 'E')], { default: 'small' }));
    expect(() => invoice(silent, [line('labour', 10_000)])).toThrow(/says no reason.*tax\.codes "small", reason/);
  });

  test('reverse charge needs the payer’s tax identifier, a rate needs category S, and every line a code', () => {
    const reverse = bookOf(taxed([code('reverse', 'AE')], { default: 'reverse' }));
    expect(() => invoice(reverse, [line('labour', 10_000)])).toThrow(/payers\/example-payer\.json, taxIdentifier/);
    const rated = bookOf(taxed([code('odd', 'Z', ['7'])], { default: 'odd' }));
    expect(() => invoice(rated, [line('labour', 10_000)])).toThrow(/category Z has a rate of 7 %/);
    expect(() => invoice(bookOf({}), [line('labour', 10_000)])).toThrow(/No tax code is given for .* "labour"/);
  });

  test('work on both sides of a change of rate stands in two groups, and neither is lost', () => {
    const owner = bookOf(
      taxed(
        [code('standard', 'S', ['19'], { to: '2026-06-30' }), code('standard', 'S', ['21'], { from: '2026-07-01' })],
        { default: 'standard' },
      ),
    );
    const made = makeInvoice({
      number: 'draft',
      issued: '2026-07-31',
      book: owner,
      payer: soundPayer,
      jobs: ['2026-06-30', '2026-07-01', '2026-07-02'].map((day) => ({
        job: jobOf('AAAA', { id: `${day}-AAAA`, day }),
        lines: [line('labour', 10_000)],
      })),
      documentDiscountPercent: '0',
      documentDiscountBecause: '',
    });
    recheckDocument(made);
    expect(made.lines.map((each) => each.taxCode)).toEqual(['standard', 'standard-21', 'standard-21']);
    expect(made.taxes.map((group) => [group.taxCode, group.baseMinorUnits, group.taxMinorUnits])).toEqual([
      ['standard', 10_000, 1900],
      ['standard-21', 20_000, 4200],
    ]);
  });
});

describe('discounts, deposits and terms', () => {
  const owner = bookOf(
    taxed([code('standard', 'S', ['20']), code('reduced', 'S', ['5'])], { default: 'standard', parts: 'reduced' }),
    {
      payment: {
        ...sound.payment,
        termsDays: 30,
        earlyPayment: { percent: '2', withinDays: 10 },
        lateInterest: '1 % a month',
      },
    },
  );

  test('a job’s discount comes first, the payer’s is on what is left, each shared over the rates', () => {
    const made = invoice(owner, [line('labour', 10_000), line('parts', 5000)], {
      job: { discountPercent: '10', discountBecause: 'scratched panel' },
      discount: '2',
    });
    recheckDocument(made);
    expect(made.allowances.map((each) => [each.because, each.amountMinorUnits, each.taxCode])).toEqual([
      ['10 % off 2026-06-05-AAAA: scratched panel', 1000, 'standard'],
      ['10 % off 2026-06-05-AAAA: scratched panel', 500, 'reduced'],
      ['2 % off: many vehicles', 180, 'standard'],
      ['2 % off: many vehicles', 90, 'reduced'],
    ]);
    expect(() => invoice(owner, [line('labour', 1)], { job: { discountPercent: '101' } })).toThrow(
      /101 % cannot be given/,
    );
  });

  test('a deposit is taken off what is due, and early payment off that', () => {
    const made = invoice(owner, [line('labour', 10_000)], { job: { depositMinorUnits: 2000 } });
    expect(made.totals).toMatchObject({ grossMinorUnits: 12_000, paidMinorUnits: 2000, dueMinorUnits: 10_000 });
    expect(made.payment.earlyPayment).toEqual({ percent: '2', until: '2026-07-10', amountMinorUnits: 9800 });
    expect([made.due, made.payment.lateInterest]).toEqual(['2026-07-30', '1 % a month']);
  });

  test('an invoice without a line is refused', () => {
    expect(() => invoice(owner, [])).toThrow(/Nothing is charged for 2026-06-05-AAAA/);
  });
});

describe('currencies without and with three decimals', () => {
  test('yen are whole, dinars have thousandths', () => {
    const vat = taxed([code('standard', 'S', ['10'])], { default: 'standard' });
    const yen = invoice(bookOf(vat, { currency: 'JPY' }), [line('labour', 9855)]);
    recheckDocument(yen);
    expect(writeMoney(yen.totals.grossMinorUnits, yen.currency, 'en-US')).toBe('¥10,841');
    const dinar = invoice(bookOf(vat, { currency: 'KWD' }), [line('parts', '1234.5', '3')]);
    recheckDocument(dinar);
    // 3 x 1.2345 = 3.7035, to three decimals 3.704; a tenth is 0.3704, to three decimals 0.370
    expect(writeMoney(dinar.totals.grossMinorUnits, dinar.currency, 'en-US')).toBe('KWD\u00a04.074');
  });
});

test('thirty purchase orders on one invoice stay with their vehicles, where one line cannot hold them', () => {
  const owner = bookOf({ regime: 'none' });
  const jobs = Array.from({ length: 30 }, (_, place) => ({
    job: jobOf('AAAA', {
      id: `2026-06-05-AA${10 + place}`,
      identity: { purchaseOrder: `PO-2026-${1000 + place}` },
    } as Partial<Job>),
    lines: [line('labour', 100)],
  }));
  const made = makeInvoice({
    number: 'draft',
    issued: '2026-06-30',
    book: owner,
    payer: soundPayer,
    jobs,
    documentDiscountPercent: '0',
    documentDiscountBecause: '',
  });
  recheckDocument(made);
  expect(made.purchaseOrder).toBeUndefined();
  expect(made.vehicles[29]?.purchaseOrder).toBe('PO-2026-1029');
});
