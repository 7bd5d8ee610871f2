import { Problem } from '../../problem.ts';
import { currencyDigits } from '../../quantities/currency-digits.ts';
import { majorText } from '../../quantities/major-units.ts';
import type { IssuedInvoice } from '../../records/issued-invoice.ts';
import { currencyCodes } from './code-lists.ts';
import { documentNote, paymentMeans, paymentTerms } from './payment-words.ts';
import { peppolAllows } from './peppol-allows.ts';
import type { SemanticInvoice } from './semantic-invoice.ts';
import { semanticLines } from './semantic-lines.ts';
import { semanticBuyer, semanticSeller } from './semantic-parties.ts';
import { mergedGroups, semanticTax } from './tax-categories.ts';

function currencyOf(invoice: IssuedInvoice): number {
  const digits = currencyDigits(invoice.currency);
  if (!currencyCodes.has(invoice.currency))
    throw new Problem(
      `"${invoice.currency}" is not a currency code of ISO 4217.`,
      'book.json, currency',
      'Write the three-letter code of the currency.',
    );
  if (digits > 2)
    throw new Problem(
      `Amounts in ${invoice.currency} have ${digits} decimals; a structured invoice (EN 16931) has room for two.`,
      'book.json, currency',
      'Use the PDF and the CSV export, which are exact; nothing was rounded to make it fit.',
    );
  return digits;
}

// a file whose sums do not follow the standard's rules to the last digit is not written at all (BR-CO-10 to BR-CO-16)
function checkSums(invoice: IssuedInvoice): void {
  const { totals, lines, allowances, taxes } = invoice;
  const sum = (numbers: readonly number[]) => numbers.reduce((all, each) => all + each, 0);
  const moved = (charge: boolean) =>
    sum(allowances.filter((each) => each.charge === charge).map((each) => each.amountMinorUnits));
  const agrees =
    sum(lines.map((line) => line.netMinorUnits)) === totals.linesMinorUnits &&
    moved(false) === totals.allowancesMinorUnits &&
    moved(true) === totals.chargesMinorUnits &&
    totals.linesMinorUnits - totals.allowancesMinorUnits + totals.chargesMinorUnits === totals.netMinorUnits &&
    sum(taxes.map((group) => group.taxMinorUnits)) === totals.taxMinorUnits &&
    sum(taxes.map((group) => group.baseMinorUnits)) === totals.netMinorUnits &&
    totals.netMinorUnits + totals.taxMinorUnits === totals.grossMinorUnits &&
    totals.grossMinorUnits - totals.paidMinorUnits + (totals.roundingMinorUnits ?? 0) === totals.dueMinorUnits;
  if (agrees && lines.length > 0) return;
  throw new Problem(
    lines.length === 0 ? 'The document has no line.' : 'The sums of the document do not follow from its lines.',
    invoice.number,
    'A structured invoice cannot be written for it; check the record.',
  );
}

function semanticTotals(invoice: IssuedInvoice, digits: number): SemanticInvoice['totals'] {
  const { totals, allowances } = invoice;
  const write = (minorUnits: number) => majorText(minorUnits, digits);
  return {
    lines: write(totals.linesMinorUnits),
    ...(allowances.some((each) => !each.charge) ? { allowances: write(totals.allowancesMinorUnits) } : {}),
    ...(allowances.some((each) => each.charge) ? { charges: write(totals.chargesMinorUnits) } : {}),
    net: write(totals.netMinorUnits),
    tax: write(totals.taxMinorUnits),
    gross: write(totals.grossMinorUnits),
    ...(totals.paidMinorUnits === 0 ? {} : { prepaid: write(totals.paidMinorUnits) }),
    ...(totals.roundingMinorUnits === undefined ? {} : { rounding: write(totals.roundingMinorUnits) }),
    due: write(totals.dueMinorUnits),
  };
}

/**
 * A document in the terms of EN 16931-1, with every check passed that its rules make of the data.
 * @param invoice an issued invoice or credit note
 * @throws Problem naming the file and field that is missing or does not fit
 */
export function makeSemanticInvoice(invoice: IssuedInvoice): SemanticInvoice {
  const digits = currencyOf(invoice);
  checkSums(invoice);
  const taxes = new Map(invoice.taxes.map((group) => [group.taxCode, semanticTax(group, invoice)]));
  const groups = mergedGroups(invoice);
  const outOfScope = groups.every(({ tax }) => tax.category === 'O');
  const write = (minorUnits: number) => majorText(minorUnits, digits);
  const { from, to } = invoice.supplied;
  const payment = paymentMeans(invoice);
  const terms = paymentTerms(invoice, digits);
  const note = documentNote(invoice);
  const semantic: SemanticInvoice = {
    peppol: false,
    credit: invoice.type === 'credit note',
    number: invoice.number,
    issued: invoice.issued,
    due: invoice.due,
    currency: invoice.currency,
    ...(note === undefined ? {} : { note }),
    ...(invoice.buyerReference === undefined ? {} : { buyerReference: invoice.buyerReference }),
    ...(invoice.purchaseOrder === undefined ? {} : { orderReference: invoice.purchaseOrder }),
    ...(from < to ? { period: { from, to } } : {}),
    delivered: to,
    ...(groups.some(({ tax }) => tax.category === 'K') ? { deliverToCountry: invoice.payer.address.country } : {}),
    ...(invoice.corrects === undefined
      ? {}
      : { preceding: { number: invoice.corrects.number, issued: invoice.corrects.issued } }),
    seller: semanticSeller(invoice, outOfScope),
    buyer: semanticBuyer(invoice, outOfScope),
    ...(payment === undefined ? {} : { payment }),
    ...(terms === undefined ? {} : { terms }),
    allowances: invoice.allowances.map((each) => ({
      charge: each.charge,
      reason: each.because,
      amount: write(each.amountMinorUnits),
      tax: taxes.get(each.taxCode) ?? { category: 'O' },
    })),
    taxes: groups.map(({ tax, baseMinorUnits, taxMinorUnits, reason, reasonCode }) => ({
      tax,
      base: write(baseMinorUnits),
      amount: write(taxMinorUnits),
      ...(reason === undefined ? {} : { reason }),
      ...(reasonCode === undefined ? {} : { reasonCode }),
    })),
    totals: semanticTotals(invoice, digits),
    lines: semanticLines(invoice, taxes, digits),
  };
  return { ...semantic, peppol: peppolAllows(semantic) };
}
