import { Problem } from '../problem.ts';
import { addDays } from '../quantities/calendar-date.ts';
import { lineAmountMinorUnits, millionths, percentOfMinorUnits } from '../quantities/decimal.ts';
import { shareOut } from '../quantities/share-out.ts';
import type { Book, LineKind, TaxCode } from '../records/book.ts';
import type { InvoiceLine, InvoiceParty, IssuedInvoice } from '../records/issued-invoice.ts';
import type { Job } from '../records/job.ts';
import type { Payer } from '../records/payer.ts';
import { computeTotals } from './compute-totals.ts';
import { validOn } from './effective-rates.ts';
import type { PricedLine } from './priced-line.ts';

export type InvoiceInput = {
  readonly number: string;
  readonly issued: string;
  readonly book: Book;
  readonly payer: Payer;
  readonly jobs: readonly { readonly job: Job; readonly lines: readonly PricedLine[] }[];
  readonly documentDiscountPercent: string;
  readonly documentDiscountBecause: string;
};

const untaxed: TaxCode = {
  id: 'untaxed',
  name: 'No tax',
  category: 'O',
  jurisdictions: [],
  reason: 'Outside the scope of tax',
};

function given<Key extends string, Value>(key: Key, value: Value | undefined): { [K in Key]?: Value } {
  return value === undefined ? {} : ({ [key]: value } as { [K in Key]?: Value });
}

function taxCodeOf(kind: LineKind, book: Book, payer: Payer, day: string): TaxCode {
  if (book.tax.regime === 'none') return untaxed;
  const id = payer.taxCode ?? book.tax.lines[kind] ?? book.tax.lines.default;
  const code = validOn(
    book.tax.codes.filter((each) => each.id === id),
    day,
  );
  if (code === null)
    throw new Problem(
      `No tax code is given for lines of the kind "${kind}" on ${day}.`,
      'book.json, tax.lines',
      `Name one of the codes in tax.codes for "${kind}" or for "default".`,
    );
  return code;
}

function seller(book: Book): InvoiceParty {
  const { name, address, phone, email, taxIdentifier, taxRegistration, companyIdentifier, electronicAddress } =
    book.business;
  return {
    name,
    address,
    ...given('phone', phone),
    ...given('email', email),
    ...given('taxIdentifier', taxIdentifier),
    ...given('taxRegistration', taxRegistration),
    ...given('companyIdentifier', companyIdentifier),
    ...given('electronicAddress', electronicAddress),
  };
}

function buyer(payer: Payer): InvoiceParty {
  const {
    id,
    name,
    address,
    contact,
    email,
    taxIdentifier,
    companyIdentifier,
    exemptionCertificate,
    electronicAddress,
  } = payer;
  return {
    id,
    name,
    address,
    ...given('contact', contact),
    ...given('email', email),
    ...given('taxIdentifier', taxIdentifier),
    ...given('companyIdentifier', companyIdentifier),
    ...given('exemptionCertificate', exemptionCertificate),
    ...given('electronicAddress', electronicAddress),
  };
}

function vehicleText(job: Job): string {
  const { year, maker, model, plate, unitNumber, vin } = job.vehicle;
  const name = [year, maker, model].filter((word) => word !== undefined).join(' ');
  const marks = [
    plate === undefined ? '' : `plate ${plate}`,
    unitNumber === undefined ? '' : `unit ${unitNumber}`,
    vin === undefined ? '' : `VIN ${vin}`,
  ].filter((word) => word !== '');
  return [name, ...marks].filter((word) => word !== '').join(', ') || job.id;
}

/**
 * An invoice from priced lines, complete but for its number; arithmetic by EN 16931-1.
 * @param input the business, the payer and the priced jobs
 * @throws Problem when no tax code is given for a kind of line
 */
export function makeInvoice(input: InvoiceInput): IssuedInvoice {
  const { book, payer, issued, jobs } = input;
  const codes = new Map<string, TaxCode>();
  const lines: InvoiceLine[] = jobs
    .flatMap(({ job, lines: priced }) => priced.map((line) => ({ job, line })))
    .map(({ job, line }, index) => {
      const code = taxCodeOf(line.kind, book, payer, job.day);
      codes.set(code.id, code);
      const amount = lineAmountMinorUnits(line.quantity, line.unitPriceMinorUnits, line.baseQuantity);
      return {
        ...line,
        number: index + 1,
        job: job.id,
        netMinorUnits: amount - line.discountMinorUnits,
        taxCode: code.id,
        incomeAccount: book.accounts.income[line.kind] ?? book.accounts.income.default ?? '4000',
      };
    });
  const allowances = documentDiscount(input, lines);
  const paid = jobs.reduce((sum, { job }) => sum + (job.depositMinorUnits ?? 0), 0);
  const { taxes, totals } = computeTotals(lines, allowances, [...codes.values()], paid);
  const days = jobs.map(({ job }) => job.day).sort();
  const { accountName, bank, iban, bic, accountNumber, routingNumber, link, earlyPayment, lateInterest, terms } =
    book.payment;
  const first = jobs[0]?.job;
  return {
    schema: 'keyout-invoice-1',
    type: 'invoice',
    number: input.number,
    issued,
    due: addDays(issued, payer.termsDays ?? book.payment.termsDays),
    supplied: { from: days[0] ?? issued, to: days.at(-1) ?? issued },
    currency: book.currency,
    language: payer.language ?? book.language,
    regime: book.tax.regime,
    pricesIncludeTax: false,
    seller: seller(book),
    payer: buyer(payer),
    payerId: payer.id,
    ...given(
      'purchaseOrder',
      [...new Set(jobs.map(({ job }) => job.identity.purchaseOrder).filter((order) => order !== undefined))].join(
        ', ',
      ) || undefined,
    ),
    ...given('buyerReference', first?.identity.buyerReference ?? payer.buyerReference),
    vehicles: jobs.map(({ job }) => ({
      job: job.id,
      day: job.day,
      text: vehicleText(job),
      ...given('customer', job.identity.customer?.name),
      ...given('place', job.identity.place),
    })),
    lines,
    allowances,
    taxes,
    totals,
    payment: {
      ...given('accountName', accountName),
      ...given('bank', bank),
      ...given('iban', iban),
      ...given('bic', bic),
      ...given('accountNumber', accountNumber),
      ...given('routingNumber', routingNumber),
      ...given('link', link),
      reference: input.number,
      ...given(
        'earlyPayment',
        earlyPayment === undefined
          ? undefined
          : {
              percent: earlyPayment.percent,
              until: addDays(issued, earlyPayment.withinDays),
              amountMinorUnits: totals.dueMinorUnits - percentOfMinorUnits(totals.dueMinorUnits, earlyPayment.percent),
            },
      ),
      ...given('lateInterest', lateInterest),
      ...given('terms', terms),
    },
  };
}

function documentDiscount(input: InvoiceInput, lines: readonly InvoiceLine[]): IssuedInvoice['allowances'] {
  if (millionths(input.documentDiscountPercent) === 0n) return [];
  const bases = new Map<string, number>();
  for (const line of lines) bases.set(line.taxCode, (bases.get(line.taxCode) ?? 0) + line.netMinorUnits);
  const total = percentOfMinorUnits(
    [...bases.values()].reduce((sum, base) => sum + base, 0),
    input.documentDiscountPercent,
  );
  const shares = shareOut(
    total,
    [...bases.values()].map((base) => BigInt(Math.max(0, base))),
  );
  const because = `${input.documentDiscountPercent} % off: ${input.documentDiscountBecause}`;
  return [...bases.keys()]
    .map((taxCode, place) => ({ charge: false, because, amountMinorUnits: shares[place] ?? 0, taxCode }))
    .filter((each) => each.amountMinorUnits !== 0);
}
