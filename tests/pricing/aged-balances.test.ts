import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { agedBalances, openDocuments, type Payment } from '../../src/pricing/aged-balances.ts';
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
