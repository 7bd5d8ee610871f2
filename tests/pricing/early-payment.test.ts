import { describe, expect, test } from 'vitest';
import { book as bookShape } from '../../src/records/book.ts';
import { bookOf, code, invoice, line, taxed } from './billed.ts';

const tax = taxed([code('standard', 'S', ['19'])], { 'flat rate': 'standard' });
const offering = (percent: string) =>
  bookOf(tax, { payment: bookShape.shape.payment.parse({ earlyPayment: { percent, withinDays: 10 } }) });

// UStAE 17.1: what is deducted is a share of what is to be paid. Worked example: bwrspicker.de, 1,190.00 less 2 % is 1,166.20;
// Haufe HI6790474, 952.00 less 2 % is 932.96.
describe('an early payment is offered on what is due', () => {
  test.each([
    [100_000, '2', 0, 116_620],
    [80_000, '2', 0, 93_296],
    [100_000, '3', 0, 115_430],
    [100_000, '2', 19_000, 98_000],
  ])('net %i at 19 %%, %s %% off, %i paid already: %i', (net, percent, paid, expected) => {
    const issued = invoice(offering(percent), [line('flat rate', net)], { job: { depositMinorUnits: paid } });
    expect(issued.payment.earlyPayment).toEqual({ percent, until: '2026-07-10', amountMinorUnits: expected });
  });

  test.each([
    ['all is paid', 119_000],
    ['more than all is paid', 120_000],
  ])('and never where %s', (_, paid) => {
    const issued = invoice(offering('2'), [line('flat rate', 100_000)], { job: { depositMinorUnits: paid } });
    expect(issued.totals.dueMinorUnits).toBe(119_000 - paid);
    expect(issued.payment).not.toHaveProperty('earlyPayment');
  });
});
