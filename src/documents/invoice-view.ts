import { writeMoney, writePrice } from '../quantities/write-money.ts';
import type { Book } from '../records/book.ts';
import type { InvoiceLine, InvoiceParty, IssuedInvoice } from '../records/issued-invoice.ts';
import { writeDate } from './write-facts.ts';

function partyLines(party: InvoiceParty): readonly { readonly text: string }[] {
  const { address } = party;
  return [
    ...address.lines,
    [address.city, address.region, address.postcode].filter((word) => word !== undefined).join(' '),
    address.country,
    ...(party.contact === undefined ? [] : [`Attention: ${party.contact}`]),
    ...(party.taxIdentifier === undefined ? [] : [`Tax identifier ${party.taxIdentifier}`]),
    ...(party.exemptionCertificate === undefined ? [] : [`Exemption certificate ${party.exemptionCertificate}`]),
  ].map((text) => ({ text }));
}

function lineView(line: InvoiceLine, money: (minorUnits: number) => string, currency: string, locale: string) {
  const hours = line.unit === 'minute' && line.baseQuantity === '60';
  const quantity = hours
    ? new Intl.NumberFormat(locale, { maximumFractionDigits: 4 }).format(Number(line.quantity) / 60)
    : line.quantity;
  return {
    what: line.what,
    because: line.because,
    quantity,
    unit: hours ? 'h' : line.unit,
    price: writePrice(line.unitPriceMinorUnits, currency, locale).replace('-', '−'),
    amount: money(line.netMinorUnits + line.discountMinorUnits),
    hasDiscount: line.discountMinorUnits !== 0,
    discountBecause: line.discountBecause,
    discount: money(-line.discountMinorUnits),
  };
}

/** Everything the invoice says, worded and formatted: strings, booleans and lists only. */
export function invoiceView({ invoice, book }: { readonly invoice: IssuedInvoice; readonly book: Book }) {
  const { locale } = book;
  const money = (minorUnits: number) => writeMoney(minorUnits, invoice.currency, locale).replace('-', '−');
  const { payment, seller, totals } = invoice;
  const credit = invoice.type === 'credit note';
  const pay = [
    ['Amount', money(totals.dueMinorUnits)],
    ['Reference', payment.reference],
    ['Account name', payment.accountName],
    ['Bank', payment.bank],
    ['Account', payment.accountNumber],
    ['Routing number', payment.routingNumber],
    ['IBAN', payment.iban?.replace(/\s/g, '').replace(/(.{4})(?=.)/g, '$1 ')],
    ['BIC', payment.bic],
    ['Online', payment.link?.replace('{number}', invoice.number).replace('{amount}', String(totals.dueMinorUnits))],
  ].flatMap(([name, value]) => (value === undefined ? [] : [{ name: name ?? '', value }]));
  return {
    paper: book.paper,
    accent: book.accent,
    language: invoice.language,
    heading: credit ? 'Credit note' : 'Invoice',
    number: invoice.number,
    business: seller.name,
    sellerLines: partyLines(seller),
    payer: invoice.payer.name,
    payerLines: partyLines(invoice.payer),
    issued: writeDate(invoice.issued, locale),
    due: writeDate(invoice.due, locale),
    supplied:
      invoice.supplied.from === invoice.supplied.to
        ? writeDate(invoice.supplied.from, locale)
        : `${writeDate(invoice.supplied.from, locale)} to ${writeDate(invoice.supplied.to, locale)}`,
    hasPurchaseOrder: invoice.purchaseOrder !== undefined,
    purchaseOrder: invoice.purchaseOrder ?? '',
    isCredit: credit,
    corrects:
      invoice.corrects === undefined
        ? ''
        : `${invoice.corrects.number} of ${writeDate(invoice.corrects.issued, locale)}: ${invoice.corrects.because}`,
    vehicles: invoice.vehicles.map((vehicle) => ({
      text: vehicle.text,
      job: vehicle.job,
      site: [vehicle.customer, vehicle.place].filter((word) => word !== undefined).join(', '),
      lines: invoice.lines
        .filter((line) => line.job === vehicle.job)
        .map((line) => lineView(line, money, invoice.currency, locale)),
    })),
    net: money(totals.linesMinorUnits),
    hasAllowances: invoice.allowances.length > 0,
    allowances: invoice.allowances.map((each) => ({
      because: each.because,
      amount: money(each.charge ? each.amountMinorUnits : -each.amountMinorUnits),
    })),
    taxes: invoice.taxes
      .filter((group) => group.category !== 'O')
      .map((group) => ({
        name:
          group.taxMinorUnits === 0
            ? group.name
            : `${group.name}, ${group.ratePercent} % of ${money(group.baseMinorUnits)}`,
        amount: money(group.taxMinorUnits),
      })),
    total: money(totals.grossMinorUnits),
    hasPaid: totals.paidMinorUnits !== 0,
    paid: money(-totals.paidMinorUnits),
    dueAmount: money(totals.dueMinorUnits),
    splits: invoice.taxes
      .filter((group) => group.jurisdictions.length > 1 && group.taxMinorUnits !== 0)
      .map((group) => ({
        text: group.jurisdictions
          .map((each) => `${each.name} ${each.ratePercent} %: ${money(each.taxMinorUnits)}`)
          .join(', '),
      })),
    taxNotes: invoice.taxes
      .filter((group) => group.reason !== undefined)
      .map((group) => ({ text: `${group.name}: ${group.reason}` })),
    pay,
    hasEarly: payment.earlyPayment !== undefined,
    early:
      payment.earlyPayment === undefined
        ? ''
        : `Paid by ${writeDate(payment.earlyPayment.until, locale)}: ${money(payment.earlyPayment.amountMinorUnits)} (${payment.earlyPayment.percent} % off).`,
    hasTerms: payment.terms !== undefined,
    terms: payment.terms ?? '',
    hasLate: payment.lateInterest !== undefined,
    late: payment.lateInterest ?? '',
    identifiers: [seller.name, seller.phone, seller.email, seller.taxIdentifier, seller.taxRegistration]
      .filter((word) => word !== undefined)
      .join(' · '),
  };
}
