import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { decimalText, lineAmountMinorUnits, percentOfMinorUnits } from '../../src/quantities/decimal.ts';
import type { LineKind } from '../../src/records/book.ts';
import { bookOf, code, invoice, line, taxed } from './billed.ts';
import { owed, recheckDocument, total } from './recheck-document.ts';
import { makeCreditNote } from './worded.ts';

describe('prices that include tax', () => {
  const gross = bookOf(
    taxed(
      [code('standard', 'S', ['19']), code('reduced', 'S', ['7'])],
      { default: 'standard', parts: 'reduced' },
      { pricesInclude: true },
    ),
  );

  test('119.00 at 19 % are 100.00 and 19.00', () => {
    const made = invoice(gross, [line('labour', 11_900, '3')]);
    recheckDocument(made);
    expect(made).toMatchObject({ pricesIncludeTax: true, totals: { netMinorUnits: 30_000, grossMinorUnits: 35_700 } });
    expect(made.totals.roundingMinorUnits).toBeUndefined();
    expect(made.lines[0]).toMatchObject({
      unitPriceMinorUnits: '10000',
      includingTax: { unitPriceMinorUnits: '11900', amountMinorUnits: 35_700 },
    });
  });

  test('1.03 at 19 % is no base with its rounded tax: the payer owes 1.03, a cent is rounding', () => {
    const made = invoice(gross, [line('labour', 103)]);
    recheckDocument(made);
    expect(made.totals).toMatchObject({
      netMinorUnits: 87,
      taxMinorUnits: 17,
      roundingMinorUnits: -1,
      dueMinorUnits: 103,
    });
  });

  test('whatever is priced, the payer owes exactly the prices agreed, and a credit note gives exactly that back', () => {
    const priced = fc.record({
      kind: fc.constantFrom<LineKind>('labour', 'parts'),
      quantity: fc.integer({ min: 1, max: 50_000 }).map((hundredths) => decimalText(BigInt(hundredths) * 10_000n)),
      price: fc.integer({ min: 0, max: 500_000 }).map((tenths) => decimalText(BigInt(tenths) * 100_000n)),
      off: fc.constantFrom('0', '0', '15'),
    });
    fc.assert(
      fc.property(fc.array(priced, { minLength: 1, maxLength: 10 }), fc.constantFrom('0', '3'), (drawn, discount) => {
        const lines = drawn.map(({ kind, quantity, price, off }) => {
          const amount = lineAmountMinorUnits(quantity, price);
          return { ...line(kind, price, quantity), discountMinorUnits: percentOfMinorUnits(amount, off) };
        });
        const agreed = total(
          lines.map((each) => lineAmountMinorUnits(each.quantity, each.unitPriceMinorUnits) - each.discountMinorUnits),
        );
        const made = invoice(gross, lines, { discount });
        recheckDocument(made);
        expect(owed(made) - (agreed - percentOfMinorUnits(agreed, discount))).toBe(0);
        expect(Math.abs(made.totals.roundingMinorUnits ?? 0)).toBeLessThanOrEqual(made.taxes.length);
        const note = (choice: 'all' | { number: number }[], earlier: ReturnType<typeof makeCreditNote>[]) =>
          makeCreditNote({
            invoice: made,
            lines: choice,
            number: 'CRN-1',
            issued: '2026-07-01',
            because: 'returned',
            earlier,
          });
        const first = note([{ number: 1 }], []);
        const rest = made.lines.length === 1 ? [] : [note('all', [first])];
        for (const each of [first, ...rest]) recheckDocument(each);
        expect(total([first, ...rest].map(owed)) - owed(made)).toBe(0);
      }),
      { numRuns: 150 },
    );
  });
});
