import { millionths } from '../quantities/decimal.ts';
import type { InvoiceLine, IssuedInvoice } from '../records/issued-invoice.ts';
import type { Writing } from '../words/writing.ts';

function lineView(line: InvoiceLine, writing: Writing) {
  const { terms, sentences } = writing;
  const hours = line.unit === 'minute' && line.baseQuantity === '60';
  const price = writing.unitPrice(line.unitPriceMinorUnits);
  const hoursRounded = Math.round((Number(line.quantity) / 60) * 10_000) / 10_000;
  return {
    what: line.what,
    hasBecause: line.because !== '',
    because: line.because,
    hasWithTax: line.includingTax !== undefined,
    withTax:
      line.includingTax === undefined ? '' : sentences.withTax(writing.money(line.includingTax.amountMinorUnits)),
    quantity: writing.decimal(hours ? hoursRounded : line.quantity),
    unit: hours ? terms.units.hour : terms.units[line.unit],
    price:
      hours || millionths(line.baseQuantity) === millionths('1')
        ? price
        : sentences.perMany(price, writing.decimal(line.baseQuantity)),
    amount: writing.money(line.netMinorUnits + line.discountMinorUnits),
    hasDiscount: line.discountMinorUnits !== 0,
    discountBecause: line.discountBecause,
    discount: writing.money(-line.discountMinorUnits),
  };
}

/** The lines of a document under the vehicle each belongs to; a line of no vehicle comes last under a heading of its own. */
export function invoiceSections(invoice: IssuedInvoice, writing: Writing) {
  const { labels, sentences } = writing;
  const section = (text: string, job: string, site: string, lines: readonly InvoiceLine[]) => ({
    text,
    hasJob: job !== '',
    job,
    hasSite: site !== '',
    site,
    caption: sentences.linesFor(text),
    lines: lines.map((line) => lineView(line, writing)),
  });
  const named = invoice.vehicles.map((vehicle) =>
    section(
      vehicle.text,
      vehicle.job,
      [
        ...new Set([vehicle.customer, vehicle.place]),
        // the head has no room for every order of a long invoice: each then stands with its vehicle
        invoice.purchaseOrder === undefined && vehicle.purchaseOrder !== undefined
          ? `${labels.purchaseOrder} ${vehicle.purchaseOrder}`
          : undefined,
      ]
        .filter((word) => word !== undefined)
        .join(', '),
      invoice.lines.filter((line) => line.job === vehicle.job),
    ),
  );
  const known = invoice.vehicles.map((vehicle) => vehicle.job);
  const others = invoice.lines.filter((line) => line.job === null || !known.includes(line.job));
  return [...named, section(labels.otherItems, '', '', others)].filter((each) => each.lines.length > 0);
}
