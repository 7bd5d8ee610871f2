import { Problem } from '../problem.ts';
import { divideRounded } from '../quantities/divide-rounded.ts';
import type { TaxCode } from '../records/book.ts';
import type { InvoiceLine, IssuedInvoice } from '../records/issued-invoice.ts';
import { computeTotals } from './compute-totals.ts';
import { creditLines, type LineToCredit } from './credit-lines.ts';
import type { Wording } from './pricing-words.ts';

type Allowance = IssuedInvoice['allowances'][number];

export type CreditNoteInput = {
  readonly invoice: IssuedInvoice;
  readonly lines: 'all' | readonly LineToCredit[];
  /** the credit note's number, or "draft" */
  readonly number: string;
  /** day of issue */
  readonly issued: string;
  readonly because: string;
  /** the invoice's language and its words */
  readonly wording: Wording;
  /** credit notes issued before; those of other invoices are passed over */
  readonly earlier: readonly IssuedInvoice[];
};

const sum = (numbers: readonly number[]) => numbers.reduce((all, each) => all + each, 0);

const sameAllowance = (one: Allowance, other: Allowance) =>
  one.charge === other.charge && one.because === other.because && one.taxCode === other.taxCode;

function codesOf(invoice: IssuedInvoice): readonly TaxCode[] {
  return invoice.taxes.map((group) => ({
    id: group.taxCode,
    name: group.name,
    category: group.category,
    jurisdictions: group.jurisdictions.map(({ name, ratePercent }) => ({ name, ratePercent })),
    ...(group.reason === undefined ? {} : { reason: group.reason }),
    ...(group.reasonCode === undefined ? {} : { reasonCode: group.reasonCode }),
  }));
}

// a document allowance follows the lines of its tax group, counted from the first credit on, so that shares telescope to the whole
function allowancesUpTo(
  invoice: IssuedInvoice,
  credited: readonly InvoiceLine[],
  whole: boolean,
): readonly Allowance[] {
  const merged: Allowance[] = [];
  for (const each of invoice.allowances) {
    const index = merged.findIndex((one) => sameAllowance(one, each));
    const amountMinorUnits = each.amountMinorUnits + (merged[index]?.amountMinorUnits ?? 0);
    merged.splice(index < 0 ? merged.length : index, 1, { ...each, amountMinorUnits });
  }
  if (whole) return merged;
  return merged.map((each) => {
    const net = (lines: readonly InvoiceLine[]) =>
      sum(lines.filter((line) => line.taxCode === each.taxCode).map((line) => line.netMinorUnits));
    const all = net(invoice.lines);
    const share = all === 0 ? 0n : divideRounded(BigInt(each.amountMinorUnits) * BigInt(net(credited)), BigInt(all));
    return { ...each, amountMinorUnits: Number(share) };
  });
}

function allowancesNow(upToNow: readonly Allowance[], earlier: readonly IssuedInvoice[]): readonly Allowance[] {
  const given = earlier.flatMap((note) => note.allowances);
  return upToNow
    .map((each) => ({
      ...each,
      amountMinorUnits:
        each.amountMinorUnits - sum(given.filter((one) => sameAllowance(one, each)).map((one) => one.amountMinorUnits)),
    }))
    .filter((each) => each.amountMinorUnits !== 0);
}

/**
 * A credit note over an invoice or some of its lines, with positive amounts (UNCL1001 type 381), immutable once numbered.
 *
 * Lines, quantities and document allowances are counted from the first credit note on, so that the parts of a line sum
 * to it exactly. Tax of each group is base times rate on every credit note (EN 16931-1, BR-CO-17), as on the invoice;
 * since rounded parts need not sum to the rounded whole, the cent that is over goes into the rounding amount (BT-114,
 * BR-CO-16), so that what all credit notes take off is exactly what the invoice charged. The other way, a last credit
 * note whose tax is not base times rate, would be an invalid document.
 * @param input the invoice, what to credit, the number and day, the reason, and the credit notes issued before
 * @throws Problem naming the line of which less is left than asked for, or when nothing is left
 */
export function makeCreditNote(input: CreditNoteInput): IssuedInvoice {
  const { invoice, issued, because } = input;
  const where = `credit of ${invoice.number}`;
  if (invoice.type !== 'invoice')
    throw new Problem(`${invoice.number} is a credit note.`, where, 'Only invoices are credited.', 2);
  if (because.trim() === '') throw new Problem('No reason is given.', where, 'Say why it is credited.', 2);
  const earlier = input.earlier.filter((note) => note.corrects?.number === invoice.number);
  const credited = creditLines(invoice, input.lines, earlier);
  if (credited.length === 0)
    throw new Problem(`Nothing of ${invoice.number} is left to credit.`, where, 'It is credited in full already.', 2);
  const { creditOf } = input.wording.words;
  const lines = credited.map(({ line, of, share }) =>
    share === 'all' ? line : { ...line, because: creditOf(of, invoice.number, share === 'a part') },
  );
  const all = [...earlier.flatMap((note) => note.lines), ...lines];
  const whole = invoice.lines.every((line) => {
    const numbers = [...earlier.flatMap((note) => note.corrects?.lines ?? []), ...credited.map((each) => each.of)];
    const own = all.filter((_, index) => numbers[index] === line.number);
    return own.length > 0 && sum(own.map((each) => each.netMinorUnits)) === line.netMinorUnits;
  });
  const codes = codesOf(invoice);
  const allowancesSoFar = allowancesUpTo(invoice, all, whole);
  const allowances = allowancesNow(allowancesSoFar, earlier);
  const { taxes, totals } = computeTotals(lines, allowances, codes, 0);
  const soFar = computeTotals(all, allowancesSoFar, codes, 0).totals.grossMinorUnits;
  const target = soFar + (whole ? (invoice.totals.roundingMinorUnits ?? 0) : 0);
  const rounding = target - sum(earlier.map((note) => note.totals.dueMinorUnits)) - totals.grossMinorUnits;
  const jobs = new Set(lines.map((line) => line.job));
  const { earlyPayment: _early, lateInterest: _late, link: _link, terms: _terms, ...account } = invoice.payment;
  return {
    ...invoice,
    type: 'credit note',
    number: input.number,
    issued,
    due: issued,
    vehicles: invoice.vehicles.filter((vehicle) => jobs.has(vehicle.job)),
    lines,
    allowances: [...allowances],
    taxes,
    totals: {
      ...totals,
      ...(rounding === 0 ? {} : { roundingMinorUnits: rounding }),
      dueMinorUnits: totals.grossMinorUnits + rounding,
    },
    payment: { ...account, reference: input.number },
    corrects: {
      number: invoice.number,
      issued: invoice.issued,
      lines: credited.map((each) => each.of),
      quantities: credited.map((each) => each.quantity),
      because: because.trim(),
    },
  };
}
