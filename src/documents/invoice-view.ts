import type { Book } from '../records/book.ts';
import type { IssuedInvoice, TaxGroup } from '../records/issued-invoice.ts';
import { type Writing, writingFor } from '../words/writing.ts';
import { logoName } from './handover-view.ts';
import { howToPay } from './how-to-pay.ts';
import { invoiceSections } from './invoice-lines.ts';
import { partyLines } from './party-lines.ts';

type InvoiceInput = {
  readonly invoice: IssuedInvoice;
  readonly book: Book;
  /** names of the images that can be printed: the business's logo as "logo" */
  readonly imageNames?: readonly string[];
};

/** Everything an invoice or credit note says, worded and formatted: strings, booleans and lists only. */
export function invoiceView({ invoice, book, imageNames }: InvoiceInput) {
  const writing = writingFor(book, invoice.language, invoice.currency);
  const { labels, sentences, money, date } = writing;
  const { seller, payer, payment, totals, supplied, corrects } = invoice;
  const credit = invoice.type === 'credit note';
  const abroad = seller.address.country !== payer.address.country;
  const pay = howToPay(invoice, writing);
  return {
    words: labels,
    paper: book.paper,
    accent: book.accent,
    language: invoice.language,
    hasLogo: imageNames?.includes(logoName) ?? false,
    heading: credit ? labels.creditNote : labels.invoice,
    number: invoice.number === 'draft' ? labels.draft : invoice.number,
    business: seller.name,
    sellerLines: partyLines(seller, abroad, writing),
    payer: payer.name,
    payerLines: partyLines(payer, abroad, writing),
    issued: date(invoice.issued),
    supplied:
      supplied.from === supplied.to ? date(supplied.from) : sentences.range(date(supplied.from), date(supplied.to)),
    hasPurchaseOrder: invoice.purchaseOrder !== undefined,
    purchaseOrder: invoice.purchaseOrder ?? '',
    hasReference: invoice.buyerReference !== undefined,
    reference: invoice.buyerReference ?? '',
    isCredit: credit,
    corrects: corrects?.number ?? '',
    because: corrects?.because ?? '',
    creditExplained:
      corrects === undefined ? '' : sentences.creditExplained(sentences.ofDate(corrects.number, date(corrects.issued))),
    sections: invoiceSections(invoice, writing),
    ...sums(invoice, writing),
    due: date(invoice.due),
    closingLine: credit ? labels.credited : sentences.dueOn(date(invoice.due)),
    dueAmount: money(totals.dueMinorUnits),
    hasPay: pay.length > 0,
    pay,
    hasEarly: !credit && payment.earlyPayment !== undefined,
    early:
      credit || payment.earlyPayment === undefined
        ? ''
        : sentences.early(
            date(payment.earlyPayment.until),
            money(payment.earlyPayment.amountMinorUnits),
            writing.percent(payment.earlyPayment.percent),
          ),
    hasTerms: !credit && payment.terms !== undefined,
    terms: credit ? '' : (payment.terms ?? ''),
    hasLate: !credit && payment.lateInterest !== undefined,
    late: credit ? '' : (payment.lateInterest ?? ''),
    identifiers: [
      seller.name,
      seller.phone,
      seller.email,
      seller.taxIdentifier,
      seller.taxRegistration,
      seller.companyIdentifier,
    ]
      .filter((word) => word !== undefined)
      .join(' · '),
  };
}

function taxName(group: TaxGroup, { sentences, percent, money }: Writing): string {
  const base = money(group.baseMinorUnits);
  return group.taxMinorUnits === 0 && Number(group.ratePercent) === 0
    ? sentences.untaxedLine(group.name, base)
    : sentences.taxLine(group.name, percent(group.ratePercent), base);
}

function sums(invoice: IssuedInvoice, writing: Writing) {
  const { money, percent } = writing;
  const { totals } = invoice;
  const taxes = invoice.taxes.filter((group) => group.category !== 'O');
  const reasons = invoice.taxes.filter((group) => group.reason !== undefined);
  return {
    net: money(totals.linesMinorUnits),
    allowances: invoice.allowances.map((each) => ({
      because: each.because,
      amount: money(each.charge ? each.amountMinorUnits : -each.amountMinorUnits),
    })),
    taxes: taxes.map((group) => ({
      name: taxName(group, writing),
      amount: money(group.taxMinorUnits),
      hasShares: group.jurisdictions.length > 1 && group.taxMinorUnits !== 0,
      shares: group.jurisdictions
        .map((each) => `${each.name} ${percent(each.ratePercent)}: ${money(each.taxMinorUnits)}`)
        .join(', '),
    })),
    total: money(totals.grossMinorUnits),
    hasRounding: (totals.roundingMinorUnits ?? 0) !== 0,
    rounding: money(totals.roundingMinorUnits ?? 0),
    hasPaid: totals.paidMinorUnits !== 0,
    paid: money(-totals.paidMinorUnits),
    taxNotes: reasons.map((group) => ({ text: `${group.name}: ${group.reason ?? ''}` })),
  };
}
