import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { IssuedInvoice } from '../../src/records/issued-invoice.ts';
import { arbitraryInvoice, invoiceOf, lineOf } from './arbitrary-invoice.ts';
import { owed, recheckDocument, total } from './recheck-document.ts';
import { makeCreditNote } from './worded.ts';

const credit = (
  invoice: IssuedInvoice,
  lines: Parameters<typeof makeCreditNote>[0]['lines'],
  earlier: readonly IssuedInvoice[] = [],
) =>
  makeCreditNote({
    invoice,
    lines,
    number: `CRN-${String(earlier.length + 1).padStart(4, '0')}`,
    issued: '2026-02-10',
    because: 'agreed on the telephone',
    earlier,
  });

describe('a credit note', () => {
  const invoice = invoiceOf(
    [
      lineOf(1, { quantity: '4', unitPriceMinorUnits: '2500' }),
      lineOf(2, { kind: 'labour', unit: 'minute', quantity: '90', unitPriceMinorUnits: '8800', baseQuantity: '60' }),
      lineOf(3, { quantity: '3', unitPriceMinorUnits: '33.5', taxCode: 'untaxed' }),
    ],
    [{ charge: false, because: 'agreed', amountMinorUnits: 1000, taxCode: 'goods' }],
    5000,
  );

  test('over everything has the invoice’s own figures, refers to it, and asks for no payment', () => {
    const note = credit(invoice, 'all');
    expect(note).toMatchObject({
      type: 'credit note',
      number: 'CRN-0001',
      issued: '2026-02-10',
      lines: invoice.lines,
      allowances: invoice.allowances,
      taxes: invoice.taxes,
      corrects: { number: 'INV-0001', issued: '2026-01-31', lines: [1, 2, 3], because: 'agreed on the telephone' },
    });
    expect(owed(note)).toBe(owed(invoice));
    expect(note.payment).toEqual({ reference: 'CRN-0001' });
    recheckDocument(note);
  });

  test('over one line takes that line’s share of the document discount and of the tax', () => {
    const note = credit(invoice, [{ number: 1 }]);
    expect(note.lines.map((line) => [line.number, line.netMinorUnits])).toEqual([[1, 10_000]]);
    // 1000 off over 10,000 + 13,200: 431 of it belong to this line; tax 8.875 % of 9569
    expect(note.allowances.map((each) => each.amountMinorUnits)).toEqual([431]);
    expect(note.totals).toMatchObject({ netMinorUnits: 9569, taxMinorUnits: 849, dueMinorUnits: 10_418 });
    recheckDocument(note);
  });

  test('over two of four parts, then over an amount, leaves what is left', () => {
    const two = credit(invoice, [{ number: 1, quantity: '2' }]);
    expect(two.lines[0]).toMatchObject({ quantity: '2', unitPriceMinorUnits: '2500', netMinorUnits: 5000 });
    const amount = credit(invoice, [{ number: 1, amountMinorUnits: 1200 }], [two]);
    expect(amount.lines[0]).toMatchObject({ quantity: '1', unit: 'each', netMinorUnits: 1200 });
    const rest = credit(invoice, [{ number: 1 }], [two, amount]);
    expect(rest.lines[0]).toMatchObject({ quantity: '2', unitPriceMinorUnits: '1900', netMinorUnits: 3800 });
    for (const note of [two, amount, rest]) recheckDocument(note);
  });

  test('one of three at 33.5 cents, three times, comes to the line’s 101 cents', () => {
    const first = credit(invoice, [{ number: 3, quantity: '1' }]);
    const second = credit(invoice, [{ number: 3, quantity: '1' }], [first]);
    const third = credit(invoice, [{ number: 3, quantity: '1' }], [first, second]);
    expect([first, second, third].map((note) => note.totals.netMinorUnits)).toEqual([34, 33, 34]);
    for (const note of [first, second, third]) recheckDocument(note);
  });

  test.each([
    ['more of a quantity than there is', [{ number: 1, quantity: '5' }], /Line 1 .* has 4 each left/],
    ['a higher amount than there is', [{ number: 2, amountMinorUnits: 13_201 }], /Line 2 .* has 13200 minor units/],
    ['a line that is not there', [{ number: 9 }], /has no line 9/],
    ['a line twice', [{ number: 1 }, { number: 1 }], /Line 1 is named twice/],
    ['nothing of a line', [{ number: 1, amountMinorUnits: 0 }], /more than zero/],
    ['a quantity that is none', [{ number: 1, quantity: '1e3' }], /"1e3" is no quantity/],
    ['a quantity and an amount', [{ number: 1, quantity: '1', amountMinorUnits: 1 }], /Both a quantity and an amount/],
  ])('is refused over %s', (_, lines, message) => {
    expect(() => credit(invoice, lines)).toThrow(message);
  });

  test('is refused over what earlier credit notes have taken already, and over another credit note', () => {
    const most = credit(invoice, [{ number: 1, quantity: '3' }, { number: 2 }]);
    expect(() => credit(invoice, [{ number: 1, quantity: '2' }], [most])).toThrow(/Line 1 .* has 1 each left/);
    expect(() => credit(invoice, [{ number: 1, amountMinorUnits: 2501 }], [most])).toThrow(/has 2500 minor units/);
    expect(() => credit(invoice, [{ number: 2 }], [most])).toThrow(/Line 2 .* credited already/);
    const last = credit(invoice, 'all', [most]);
    expect(() => credit(invoice, 'all', [most, last])).toThrow(/Nothing of INV-0001 is left/);
    expect(() => credit(most, 'all')).toThrow(/CRN-0001 is a credit note/);
  });

  test('passes over credit notes of other invoices', () => {
    const other = credit({ ...invoice, number: 'INV-0002' }, 'all');
    expect(credit(invoice, 'all', [other]).lines).toEqual(invoice.lines);
  });

  test('of every line brings the balance to zero, however it is cut up, and every part obeys the rules of EN 16931', () => {
    const step = fc.record({
      line: fc.nat(7),
      part: fc.integer({ min: 1, max: 100 }),
      by: fc.constantFrom('quantity', 'amount', 'rest'),
    });
    fc.assert(
      fc.property(arbitraryInvoice, fc.array(step, { maxLength: 12 }), (invoice, steps) => {
        const notes: IssuedInvoice[] = [];
        const attempt = (lines: Parameters<typeof makeCreditNote>[0]['lines']) => {
          try {
            notes.push(credit(invoice, lines, notes));
          } catch (error) {
            expect((error as Error).name).toBe('Problem');
          }
        };
        for (const { line: place, part, by } of steps) {
          const line = invoice.lines[place % invoice.lines.length];
          const number = line?.number ?? 0;
          if (by === 'rest') attempt([{ number }]);
          else if (by === 'amount')
            attempt([{ number, amountMinorUnits: Math.ceil(((line?.netMinorUnits ?? 0) * part) / 100) }]);
          else attempt([{ number, quantity: ((Number(line?.quantity) * part) / 100).toFixed(4) }]);
        }
        attempt('all');
        for (const note of notes) {
          recheckDocument(note);
          expect(owed(note)).toBeGreaterThanOrEqual(0);
        }
        expect(owed(invoice) - total(notes.map(owed))).toBe(0);
        expect(invoice.totals.netMinorUnits - total(notes.map((note) => note.totals.netMinorUnits))).toBe(0);
        for (const group of invoice.taxes) {
          const bases = notes.flatMap((note) => note.taxes.filter((each) => each.taxCode === group.taxCode));
          expect(group.baseMinorUnits - total(bases.map((each) => each.baseMinorUnits))).toBe(0);
        }
      }),
      { numRuns: 300 },
    );
  });
});
