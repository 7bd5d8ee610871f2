import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { agedBalances, openDocuments, type Payment, paymentCurrencies } from '../../src/pricing/aged-balances.ts';
import { addDays } from '../../src/quantities/calendar-date.ts';
import { sampleCredit, sampleDocument } from '../exports/sample-documents.ts';

const payment = (day: string, amountMinorUnits: number, allocations: Payment['allocations']): Payment => ({
  event: 'paid',
  sequence: 1,
  previous: '0'.repeat(64),
  written: `${day}T12:00:00Z`,
  day,
  payment: 'PAY-0001',
  payer: 'north-lattice',
  amountMinorUnits,
  method: 'transfer',
  allocations,
  files: [],
});
const invoice = sampleDocument({}); // 120.00, due 2026-12-24

describe('a balance stands in the bucket of its days after the due date', () => {
  test.each([
    [-30, 'current'],
    [0, 'current'],
    [1, '1-30'],
    [30, '1-30'],
    [31, '31-60'],
    [60, '31-60'],
    [61, '61-90'],
    [90, '61-90'],
    [91, 'over 90'],
    [4000, 'over 90'],
  ] as const)('%i days: %s', (days, bucket) => {
    const [only] = agedBalances([invoice], [], addDays('2026-12-24', days));
    expect(only?.buckets[bucket]).toBe(12_000);
    expect(only?.totalMinorUnits).toBe(12_000);
  });
});

test('what happens after the day does not count', () => {
  const credit = sampleCredit(invoice, { issued: '2026-12-02' });
  const paid = payment('2026-12-03', 2000, [{ invoice: 'INV-0001', amountMinorUnits: 2000 }]);
  const balance = (day: string) => openDocuments([invoice, credit], [paid], day).map((each) => each.balanceMinorUnits);
  expect(balance('2026-11-23')).toEqual([]);
  expect(balance('2026-12-01')).toEqual([12_000]);
  expect(balance('2026-12-02')).toEqual([0]);
  expect(balance('2026-12-03')).toEqual([-2000]);
});

test('over-payments and credits beyond the balance stand apart, and the total counts them', () => {
  const paid = payment('2026-12-03', 15_000, [{ invoice: 'INV-0001', amountMinorUnits: 12_000 }]);
  const credit = sampleCredit(invoice, { issued: '2026-12-04' });
  const [only] = agedBalances([invoice, credit], [paid], '2026-12-31');
  expect(only).toMatchObject({ creditMinorUnits: 15_000, totalMinorUnits: -15_000, currency: 'EUR' });
  expect(only?.buckets).toEqual({ current: 0, '1-30': 0, '31-60': 0, '61-90': 0, 'over 90': 0 });
});

test('a deposit named on the invoice is paid already', () => {
  const withDeposit = sampleDocument({ paidMinorUnits: 5000 });
  expect(openDocuments([withDeposit], [], '2026-12-01')[0]).toMatchObject({
    paidMinorUnits: 5000,
    balanceMinorUnits: 7000,
  });
});

describe('payers and currencies stand apart', () => {
  const of = (number: string, payerId: string, currency: string, due = '2026-12-24', changed: object = {}) =>
    sampleDocument({
      with: {
        number,
        payerId,
        currency,
        due,
        payer: { name: `Payer ${payerId}`, address: { lines: ['Street 1'], city: 'Town', country: 'US' } },
        ...changed,
      },
    });
  const documents = [
    of('INV-0005', 'zinc', 'USD'),
    of('INV-0004', 'alder', 'USD', '2026-12-30'),
    of('INV-0003', 'alder', 'EUR'),
    of('INV-0002', 'alder', 'USD'),
    of('INV-0001', 'alder', 'USD'),
  ];

  test('one entry a payer and currency, by payer and then currency, its open invoices by due date and number', () => {
    const paid = payment('2026-12-01', 12_000, [{ invoice: 'INV-0002', amountMinorUnits: 12_000 }]);
    const balances = agedBalances(documents, [{ ...paid, payer: 'alder', currency: 'USD' }], '2026-12-31');
    expect(
      balances.map((each) => [
        each.payerId,
        each.payerName,
        each.currency,
        each.totalMinorUnits,
        each.creditMinorUnits,
      ]),
    ).toEqual([
      ['alder', 'Payer alder', 'EUR', 12_000, 0],
      ['alder', 'Payer alder', 'USD', 24_000, 0],
      ['zinc', 'Payer zinc', 'USD', 12_000, 0],
    ]);
    expect(balances.map((each) => each.open.map((one) => one.number))).toEqual([
      ['INV-0003'],
      ['INV-0001', 'INV-0004'],
      ['INV-0005'],
    ]);
    expect(openDocuments(documents, [], '2026-12-31').map((each) => each.number)).toEqual([
      'INV-0001',
      'INV-0002',
      'INV-0003',
      'INV-0005',
      'INV-0004',
    ]);
  });

  test('a payer of whom no document is known is named by the id; what is paid in advance is to the payer’s credit', () => {
    const advance = { ...payment('2026-12-01', 5000, []), payer: 'nobody', currency: 'GBP' };
    expect(agedBalances(documents, [advance], '2026-12-31').find((each) => each.payerId === 'nobody')).toEqual({
      payerId: 'nobody',
      payerName: 'nobody',
      currency: 'GBP',
      buckets: { current: 0, '1-30': 0, '31-60': 0, '61-90': 0, 'over 90': 0 },
      creditMinorUnits: 5000,
      totalMinorUnits: -5000,
      open: [],
    });
  });

  test('a payment counts from its day on, and for an invoice of a later day as credit until that day', () => {
    const later = of('INV-0006', 'zinc', 'USD', '2027-02-01', { issued: '2027-01-02' });
    const paid = { ...payment('2026-12-05', 3000, [{ invoice: 'INV-0006', amountMinorUnits: 3000 }]), payer: 'zinc' };
    const on = (day: string) =>
      agedBalances([...documents, later], [paid], day)
        .filter((each) => each.payerId === 'zinc')
        .map((each) => [each.creditMinorUnits, each.totalMinorUnits, each.open.length]);
    expect(on('2026-12-04')).toEqual([[0, 12_000, 1]]);
    expect(on('2026-12-05')).toEqual([[3000, 9000, 1]]);
    expect(on('2027-01-01')).toEqual([[3000, 9000, 1]]);
    expect(on('2027-01-02')).toEqual([[0, 21_000, 2]]);
  });

  test('a credit note dated before its invoice is to the payer’s credit until the invoice’s day', () => {
    const later = of('INV-0006', 'zinc', 'USD', '2027-02-01', { issued: '2027-01-02' });
    const credit = sampleCredit(later, { issued: '2026-12-10' });
    const on = (day: string) =>
      agedBalances([...documents, later, credit], [], day)
        .filter((each) => each.payerId === 'zinc')
        .map((each) => [each.creditMinorUnits, each.totalMinorUnits]);
    expect(on('2026-12-09')).toEqual([[0, 12_000]]);
    expect(on('2026-12-10')).toEqual([[12_000, 0]]);
    expect(on('2027-01-02')).toEqual([[0, 12_000]]);
  });

  test('a payment’s currency is what the ledger says, else its invoice’s, else the payer’s last, else the book’s last', () => {
    const currency = (changed: object) => paymentCurrencies(documents)({ ...payment('2026-12-01', 1, []), ...changed });
    const to = (...invoices: string[]) => ({
      allocations: invoices.map((invoice) => ({ invoice, amountMinorUnits: 1 })),
    });
    expect(currency({ payer: 'alder', currency: 'GBP', ...to('INV-0003') })).toBe('GBP');
    expect(currency({ payer: 'zinc', ...to('INV-0003') })).toBe('EUR');
    expect(currency({ payer: 'zinc', ...to('INV-9999', 'INV-0003') })).toBe('EUR');
    expect(paymentCurrencies(documents.slice(0, 3))({ ...payment('2026-12-01', 1, []), payer: 'alder' })).toBe('EUR');
    expect(currency({ payer: 'nobody' })).toBe('USD');
    expect(paymentCurrencies([])({ ...payment('2026-12-01', 1, []) })).toBeUndefined();
  });
});

test('totals are what was charged less what was credited and paid, whatever the order', () => {
  fc.assert(
    fc.property(
      fc.array(fc.record({ price: fc.integer({ min: 0, max: 90_000 }), payer: fc.constantFrom('one', 'two') }), {
        maxLength: 8,
      }),
      fc.array(fc.record({ amount: fc.nat(50_000), part: fc.nat(100), at: fc.nat(7) }), { maxLength: 8 }),
      (charged, paid) => {
        const documents = charged.map(({ price, payer }, place) =>
          sampleDocument({
            lines: [{ quantity: '1', unitPriceMinorUnits: String(price) }],
            with: { number: `INV-${place}`, payerId: payer, due: addDays('2026-12-01', place * 17) },
          }),
        );
        const payments = paid.flatMap(({ amount, part, at }) => {
          const target = documents[at % Math.max(1, documents.length)];
          return target === undefined
            ? []
            : [
                {
                  ...payment('2026-12-20', amount, [
                    { invoice: target.number, amountMinorUnits: Math.floor((amount * part) / 100) },
                  ]),
                  payer: target.payerId,
                },
              ];
        });
        const sum = (numbers: readonly number[]) => numbers.reduce((all, each) => all + each, 0);
        const expected =
          sum(documents.map((each) => each.totals.grossMinorUnits)) -
          sum(payments.map((each) => each.amountMinorUnits));
        const forward = agedBalances(documents, payments, '2027-02-01');
        expect(sum(forward.map((each) => each.totalMinorUnits))).toBe(expected);
        const backward = agedBalances(documents.toReversed(), payments.toReversed(), '2027-02-01');
        expect(backward).toEqual(forward);
      },
    ),
  );
});
