import { Problem } from '../problem.ts';
import { addDays } from '../quantities/calendar-date.ts';
import { lineAmountMinorUnits, percentOfMinorUnits } from '../quantities/decimal.ts';
import type { Book, TaxCode } from '../records/book.ts';
import type { InvoiceLine, IssuedInvoice } from '../records/issued-invoice.ts';
import type { Job } from '../records/job.ts';
import type { Payer } from '../records/payer.ts';
import { computeTotals } from './compute-totals.ts';
import { documentDiscounts } from './document-discounts.ts';
import { buyerOf, given, sellerOf, vehicleText } from './invoice-parties.ts';
import { netOfTax } from './net-of-tax.ts';
import type { PricedLine } from './priced-line.ts';
import type { Wording } from './pricing-words.ts';
import { settingOf } from './setting.ts';
import { collectCodes, taxCodeOf } from './tax-codes.ts';

export type InvoiceInput = {
  readonly number: string;
  readonly issued: string;
  readonly book: Book;
  readonly payer: Payer;
  /** the invoice's language and its words */
  readonly wording: Wording;
  readonly jobs: readonly { readonly job: Job; readonly lines: readonly PricedLine[] }[];
  readonly documentDiscountPercent: string;
  /** absent: as agreed */
  readonly documentDiscountBecause?: string | undefined;
};

type Charged = Pick<IssuedInvoice, 'lines' | 'allowances' | 'taxes' | 'totals'>;

function grossOrNetLines(input: InvoiceInput, add: (code: TaxCode) => string): readonly InvoiceLine[] {
  const { book, payer, jobs } = input;
  return jobs
    .flatMap(({ job, lines }) => lines.map((line) => ({ job, line })))
    .map(({ job, line }, index) => ({
      ...line,
      number: index + 1,
      job: job.id,
      netMinorUnits:
        lineAmountMinorUnits(line.quantity, line.unitPriceMinorUnits, line.baseQuantity) - line.discountMinorUnits,
      taxCode: add(taxCodeOf(line.kind, { book, payer, day: job.day, words: input.wording.words })),
      incomeAccount: book.accounts.income[line.kind] ?? book.accounts.income.default ?? '4000',
    }));
}

function charge(input: InvoiceInput): Charged {
  const jobs = input.jobs.map(({ job }) => job);
  const setting = settingOf(input.book, input.wording);
  const codes = collectCodes();
  const lines = grossOrNetLines(input, codes.add);
  if (lines.length === 0)
    throw new Problem(
      `Nothing is charged for ${jobs.map((job) => job.id).join(', ')}.`,
      'rates.json',
      'Add a price for this kind of visit (0 if it is free), or leave the job unbilled.',
    );
  const discounts = documentDiscounts(
    lines,
    jobs,
    input.documentDiscountPercent,
    input.documentDiscountBecause ?? setting.words.asAgreed,
    setting,
  );
  const paid = jobs.reduce((sum, job) => sum + (job.depositMinorUnits ?? 0), 0);
  if (!includesTax(input.book))
    return { lines: [...lines], allowances: discounts, ...computeTotals(lines, discounts, codes.all(), paid) };
  const net = netOfTax(lines, discounts, codes.all());
  const { taxes, totals } = computeTotals(net.lines, net.allowances, codes.all(), paid);
  const rounding = net.grossMinorUnits - totals.grossMinorUnits;
  return {
    lines: [...net.lines],
    allowances: [...net.allowances],
    taxes,
    totals:
      rounding === 0
        ? totals
        : { ...totals, roundingMinorUnits: rounding, dueMinorUnits: totals.dueMinorUnits + rounding },
  };
}

const includesTax = (book: Book) => book.tax.pricesInclude && book.tax.regime !== 'none';

function paymentOf({ book, number, issued }: InvoiceInput, dueMinorUnits: number): IssuedInvoice['payment'] {
  const { accountName, bank, iban, bic, accountNumber, routingNumber, link, earlyPayment, lateInterest, terms } =
    book.payment;
  return {
    ...given('accountName', accountName),
    ...given('bank', bank),
    ...given('iban', iban),
    ...given('bic', bic),
    ...given('accountNumber', accountNumber),
    ...given('routingNumber', routingNumber),
    ...given('link', link),
    reference: number,
    ...given(
      'earlyPayment',
      earlyPayment === undefined || dueMinorUnits <= 0
        ? undefined
        : {
            percent: earlyPayment.percent,
            until: addDays(issued, earlyPayment.withinDays),
            amountMinorUnits: dueMinorUnits - percentOfMinorUnits(dueMinorUnits, earlyPayment.percent),
          },
    ),
    ...given('lateInterest', lateInterest),
    ...given('terms', terms),
  };
}

function ordersOf(jobs: readonly Job[]): string | undefined {
  const orders = [...new Set(jobs.flatMap(({ identity }) => identity.purchaseOrder ?? []))].join(', ');
  // a document has room for one reference of 200 characters (BT-13); of more, each vehicle's section carries its own
  return orders === '' || orders.length > 200 ? undefined : orders;
}

/**
 * An invoice from priced lines, complete but for its number; arithmetic by EN 16931-1.
 * @param input the business, the payer and the priced jobs
 * @throws Problem when a tax code is missing or lacks what its category needs, or when nothing is charged
 */
export function makeInvoice(input: InvoiceInput): IssuedInvoice {
  const { book, payer, issued, number } = input;
  const jobs = input.jobs.map(({ job }) => job);
  const charged = charge(input);
  const { language, words } = input.wording;
  const days = jobs.map(({ day }) => day).sort();
  return {
    schema: 'keyout-invoice-1',
    type: 'invoice',
    number,
    issued,
    due: addDays(issued, payer.termsDays ?? book.payment.termsDays),
    supplied: { from: days[0] ?? issued, to: days.at(-1) ?? issued },
    currency: book.currency,
    language,
    regime: book.tax.regime,
    pricesIncludeTax: includesTax(book),
    seller: sellerOf(book),
    payer: buyerOf(payer),
    payerId: payer.id,
    ...given('purchaseOrder', ordersOf(jobs)),
    ...given('buyerReference', jobs[0]?.identity.buyerReference ?? payer.buyerReference),
    vehicles: jobs.map((job) => ({
      job: job.id,
      day: job.day,
      text: vehicleText(job, words),
      ...given('customer', job.identity.customer?.name),
      ...given('place', job.identity.place),
      ...given('purchaseOrder', job.identity.purchaseOrder),
    })),
    ...charged,
    payment: paymentOf(input, charged.totals.dueMinorUnits),
  };
}
