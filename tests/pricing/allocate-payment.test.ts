import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { OpenDocument } from '../../src/pricing/aged-balances.ts';
import { allocatePayment, drawOnCredit } from '../../src/pricing/allocate-payment.ts';

const open = (number: string, due: string, balanceMinorUnits: number): OpenDocument => ({
  number,
  payerId: 'payer',
  payerName: 'Payer',
  currency: 'USD',
  issued: '2026-01-01',
  due,
  grossMinorUnits: balanceMinorUnits,
  paidMinorUnits: 0,
  creditedMinorUnits: 0,
  balanceMinorUnits,
  daysOverdue: 0,
  bucket: 'current',
});
const three = [open('C', '2026-03-01', 300), open('A', '2026-01-01', 100), open('B', '2026-02-01', 200)];
const name = (invoice: string, amountMinorUnits: number | null = null) => ({ invoice, amountMinorUnits });
const all = [name('A'), name('B'), name('C')];

describe('a payment', () => {
  test.each<[string, number, { invoice: string; amountMinorUnits: number | null }[], [string, number][], number]>([
    [
      'in part pays the oldest due first',
      150,
      all,
      [
        ['A', 100],
        ['B', 50],
      ],
      0,
    ],
    [
      'in full pays everything',
      600,
      all,
      [
        ['A', 100],
        ['B', 200],
        ['C', 300],
      ],
      0,
    ],
    [
      'beyond what is open leaves a rest',
      650,
      all,
      [
        ['A', 100],
        ['B', 200],
        ['C', 300],
      ],
      50,
    ],
    [
      'with an amount named for one gives the others the remainder',
      150,
      [name('A'), name('B'), name('C', 120)],
      [
        ['A', 30],
        ['C', 120],
      ],
      0,
    ],
    [
      'with every amount named keeps what is over',
      500,
      [name('A', 10), name('B', 20), name('C', 30)],
      [
        ['A', 10],
        ['B', 20],
        ['C', 30],
      ],
      440,
    ],
  ])('%s', (_, amount, named, expected, rest) => {
    expect(allocatePayment(amount, named, three)).toEqual({
      allocations: expected.map(([invoice, amountMinorUnits]) => ({ invoice, amountMinorUnits })),
      restMinorUnits: rest,
    });
  });

  test('is never lost, never pays more than is open, and pays a later invoice only when the earlier are settled', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 100_000 }),
        fc.array(
          fc.record({ day: fc.integer({ min: 10, max: 28 }), balance: fc.integer({ min: -500, max: 20_000 }) }),
          {
            minLength: 1,
            maxLength: 8,
          },
        ),
        (amount, given) => {
          const documents = given.map((each, place) => open(`INV-${place}`, `2026-01-${each.day}`, each.balance));
          const { allocations, restMinorUnits } = allocatePayment(
            amount,
            documents.map((each) => name(each.number)),
            documents,
          );
          const sum = allocations.reduce((total, each) => total + each.amountMinorUnits, 0);
          expect(sum + restMinorUnits).toBe(amount);
          expect(restMinorUnits).toBeGreaterThanOrEqual(0);
          let unsettled = false;
          for (const each of [...documents].sort((one, other) =>
            `${one.due} ${one.number}` < `${other.due} ${other.number}` ? -1 : 1,
          )) {
            const part = allocations.find((one) => one.invoice === each.number)?.amountMinorUnits ?? 0;
            expect(part).toBeGreaterThanOrEqual(0);
            expect(part).toBeLessThanOrEqual(Math.max(0, each.balanceMinorUnits));
            if (unsettled) expect(part).toBe(0);
            if (part < each.balanceMinorUnits) unsettled = true;
          }
        },
      ),
    );
  });
});

test('credit is drawn from the oldest overpaid invoices first, never more than they are over', () => {
  const overpaid = [open('A', '2026-01-01', -30), open('B', '2026-02-01', -50)];
  expect(drawOnCredit(40, overpaid)).toEqual([
    { invoice: 'A', amountMinorUnits: -30 },
    { invoice: 'B', amountMinorUnits: -10 },
  ]);
  expect(drawOnCredit(100, overpaid)).toEqual([
    { invoice: 'A', amountMinorUnits: -30 },
    { invoice: 'B', amountMinorUnits: -50 },
  ]);
});
