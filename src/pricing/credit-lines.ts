import { Problem } from '../problem.ts';
import { decimalText, lineAmountMinorUnits, millionths } from '../quantities/decimal.ts';
import { divideRounded } from '../quantities/divide-rounded.ts';
import { priceForAmount } from '../quantities/price-for-amount.ts';
import type { InvoiceLine, IssuedInvoice } from '../records/issued-invoice.ts';

/** One line to credit: all that is left of it, some of its quantity, or an amount without tax, in whole minor units. */
export type LineToCredit = {
  readonly number: number;
  readonly quantity?: string | undefined;
  readonly amountMinorUnits?: number | undefined;
};

/** A line of a credit note, which line of the invoice it credits, and how much of that line's quantity. */
export type CreditedLine = {
  readonly line: InvoiceLine;
  readonly of: number;
  /** all of a line, what is left of it, or an amount that is no quantity of it */
  readonly share: 'all' | 'what is left' | 'a part';
  readonly quantity: string;
};

type Credited = { readonly times: number; readonly netMinorUnits: number; readonly quantity: bigint };

function creditedBefore(line: InvoiceLine, earlier: readonly IssuedInvoice[]): Credited {
  const found = earlier.flatMap((note) =>
    note.lines.flatMap((each, index) =>
      note.corrects?.lines[index] === line.number
        ? [{ netMinorUnits: each.netMinorUnits, quantity: millionths(note.corrects.quantities?.[index] ?? '0') }]
        : [],
    ),
  );
  return {
    times: found.length,
    netMinorUnits: found.reduce((sum, each) => sum + each.netMinorUnits, 0),
    quantity: found.reduce((sum, each) => sum + each.quantity, 0n),
  };
}

const magnitude = (value: bigint) => (value < 0n ? -value : value);

// what so much of the line's quantity comes to, counted from its start, so that parts of it telescope to the whole
function upTo(line: InvoiceLine, quantity: bigint): { readonly gross: number; readonly discount: number } {
  const whole = millionths(line.quantity);
  return {
    gross: lineAmountMinorUnits(decimalText(quantity), line.unitPriceMinorUnits, line.baseQuantity),
    discount: whole === 0n ? 0 : Number(divideRounded(BigInt(line.discountMinorUnits) * quantity, whole)),
  };
}

function written(line: InvoiceLine, netMinorUnits: number, quantity: bigint, discount: number): CreditedLine {
  const text = decimalText(quantity);
  const { includingTax: _whole, ...own } = line;
  const shared = { ...own, netMinorUnits };
  const amount = lineAmountMinorUnits(text, line.unitPriceMinorUnits, line.baseQuantity);
  if (quantity !== 0n && amount - discount === netMinorUnits)
    return {
      of: line.number,
      share: 'what is left',
      quantity: text,
      line: { ...shared, quantity: text, discountMinorUnits: discount },
    };
  const plain = { ...shared, discountMinorUnits: 0, discountBecause: '' };
  const price = priceForAmount(netMinorUnits, text, line.baseQuantity);
  if (price !== null)
    return {
      of: line.number,
      share: 'what is left',
      quantity: text,
      line: { ...plain, quantity: text, unitPriceMinorUnits: price },
    };
  return {
    of: line.number,
    share: 'a part',
    quantity: text,
    line: {
      ...plain,
      quantity: netMinorUnits < 0 ? '-1' : '1',
      unit: 'each',
      unitPriceMinorUnits: String(Math.abs(netMinorUnits)),
      baseQuantity: '1',
    },
  };
}

function tooMuch(invoice: IssuedInvoice, line: InvoiceLine, left: string): Problem {
  return new Problem(
    `Line ${line.number} of ${invoice.number} ("${line.what}") has ${left} left to credit.`,
    `credit of ${invoice.number}, line ${line.number}`,
    'Credit no more than that, or name the line without a figure to credit all that is left.',
    2,
  );
}

function byAmount(invoice: IssuedInvoice, line: InvoiceLine, amount: number, left: number): CreditedLine {
  if (!Number.isSafeInteger(amount) || amount <= 0)
    throw new Problem(
      'An amount to credit must be more than zero, in whole minor units.',
      `credit of ${invoice.number}, line ${line.number}`,
      'Give the amount without tax; 8500 means 85.00.',
      2,
    );
  const net = line.netMinorUnits < 0 ? -amount : amount;
  if (amount > Math.abs(left) || Math.sign(left) !== Math.sign(net))
    throw tooMuch(invoice, line, `${Math.abs(left)} minor units of ${invoice.currency}`);
  return written(line, net, 0n, 0);
}

function byQuantity(invoice: IssuedInvoice, line: InvoiceLine, text: string, before: Credited): CreditedLine {
  const quantity = /^\d{1,12}(\.\d{1,6})?$/.test(text) ? millionths(text) : 0n;
  if (quantity === 0n)
    throw new Problem(
      `"${text}" is no quantity to credit.`,
      `credit of ${invoice.number}, line ${line.number}`,
      'Give a number above zero with at most six decimals.',
      2,
    );
  const whole = millionths(line.quantity);
  const signed = whole < 0n ? -quantity : quantity;
  if (magnitude(before.quantity + signed) > magnitude(whole))
    throw tooMuch(invoice, line, `${decimalText(magnitude(whole - before.quantity))} ${line.unit}`);
  const from = upTo(line, before.quantity);
  const to = upTo(line, before.quantity + signed);
  const discount = to.discount - from.discount;
  const net = to.gross - from.gross - discount;
  const left = line.netMinorUnits - before.netMinorUnits;
  if (Math.abs(net) > Math.abs(left)) throw tooMuch(invoice, line, `${Math.abs(left)} minor units`);
  return written(line, net, signed, discount);
}

function rest(line: InvoiceLine, before: Credited): CreditedLine {
  if (before.times === 0) return { of: line.number, share: 'all', quantity: line.quantity, line };
  const quantity = millionths(line.quantity) - before.quantity;
  const discount = line.discountMinorUnits - upTo(line, before.quantity).discount;
  return written(line, line.netMinorUnits - before.netMinorUnits, quantity, discount);
}

/**
 * The lines of a credit note, never more than earlier credit notes have left of each line.
 * @param invoice the invoice
 * @param lines the lines to credit, or all that is left of every line
 * @param earlier credit notes of this invoice
 * @throws Problem naming the line that is unknown, named twice, credited already, or asked for more than is left of it
 */
export function creditLines(
  invoice: IssuedInvoice,
  lines: 'all' | readonly LineToCredit[],
  earlier: readonly IssuedInvoice[],
): readonly CreditedLine[] {
  const open = (line: InvoiceLine) => {
    const before = creditedBefore(line, earlier);
    return before.times === 0 || before.netMinorUnits !== line.netMinorUnits;
  };
  const wanted: readonly LineToCredit[] =
    lines === 'all' ? invoice.lines.filter(open).map(({ number }) => ({ number })) : lines;
  const credited = wanted.map((each, index) => {
    const where = `credit of ${invoice.number}, line ${each.number}`;
    const line = invoice.lines.find((one) => one.number === each.number);
    if (line === undefined)
      throw new Problem(`${invoice.number} has no line ${each.number}.`, where, 'Name one of its lines.', 2);
    if (wanted.findIndex((one) => one.number === each.number) !== index)
      throw new Problem(`Line ${each.number} is named twice.`, where, 'Name each line once.', 2);
    if (!open(line))
      throw new Problem(`Line ${each.number} of ${invoice.number} is credited already.`, where, 'Leave it out.', 2);
    const before = creditedBefore(line, earlier);
    if (each.quantity !== undefined && each.amountMinorUnits !== undefined)
      throw new Problem('Both a quantity and an amount are given.', where, 'Give one of them.', 2);
    if (each.quantity !== undefined) return byQuantity(invoice, line, each.quantity, before);
    if (each.amountMinorUnits !== undefined)
      return byAmount(invoice, line, each.amountMinorUnits, line.netMinorUnits - before.netMinorUnits);
    return rest(line, before);
  });
  return credited.map((each, index) => ({ ...each, line: { ...each.line, number: index + 1 } }));
}
