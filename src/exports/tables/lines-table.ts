import { currencyDigits } from '../../quantities/currency-digits.ts';
import { majorPriceText, plainDecimal } from '../../quantities/major-units.ts';
import type { InvoiceLine, IssuedInvoice, TaxGroup } from '../../records/issued-invoice.ts';
import { type ExportInput, moneyCell, periodDocuments, signed } from '../export-input.ts';
import { type Cell, type Column, makeTable, type Table } from './table.ts';

type Row = {
  readonly document: IssuedInvoice;
  /** null: an allowance or charge on the whole document */
  readonly line: InvoiceLine | null;
  readonly kind: string;
  readonly text: string;
  readonly netMinorUnits: number;
  readonly account: string;
  readonly tax: TaxGroup | undefined;
};

const ofLine = (value: (line: InvoiceLine, document: IssuedInvoice) => Cell) => (row: Row) =>
  row.line === null ? null : value(row.line, row.document);

const columns: readonly Column<Row>[] = [
  {
    name: 'document',
    kind: 'text',
    about: 'Number of the invoice or credit note.',
    of: ({ document }) => document.number,
  },
  { name: 'issued', kind: 'date', about: 'Day of issue.', of: ({ document }) => document.issued },
  {
    name: 'line',
    kind: 'integer',
    about: 'Line on the document; empty for a discount or charge on the whole document.',
    of: ofLine((line) => line.number),
  },
  { name: 'payer', kind: 'text', about: "The payer's short name in the book.", of: ({ document }) => document.payerId },
  { name: 'job', kind: 'text', about: 'The job, if the line belongs to one.', of: ofLine((line) => line.job) },
  {
    name: 'vehicle',
    kind: 'text',
    about: 'The vehicle of the job.',
    of: ofLine((line, document) => document.vehicles.find((vehicle) => vehicle.job === line.job)?.text ?? null),
  },
  {
    name: 'kind',
    kind: 'text',
    about: 'Kind of line ("flat rate", "parts" and so on); "document discount" or "document charge".',
    of: ({ kind }) => kind,
  },
  { name: 'text', kind: 'text', about: 'What was charged.', of: ({ text }) => text },
  { name: 'because', kind: 'text', about: 'How the figure came about.', of: ofLine((line) => line.because) },
  {
    name: 'quantity',
    kind: 'decimal',
    about: 'Quantity; negative on credit notes.',
    of: ofLine((line, document) => {
      const text = plainDecimal(line.quantity);
      if (document.type === 'invoice' || text === '0') return text;
      return text.startsWith('-') ? text.slice(1) : `-${text}`;
    }),
  },
  { name: 'unit', kind: 'text', about: 'Unit of the quantity.', of: ofLine((line) => line.unit) },
  {
    name: 'price',
    kind: 'decimal',
    about: 'Price for price_per units, exact, so that it may have more decimals than the currency.',
    of: ofLine((line, document) => majorPriceText(line.unitPriceMinorUnits, currencyDigits(document.currency))),
  },
  {
    name: 'price_per',
    kind: 'decimal',
    about: 'For how many units the price is.',
    of: ofLine((line) => plainDecimal(line.baseQuantity)),
  },
  {
    name: 'discount',
    kind: 'money',
    about: 'Taken off the line: quantity x price / price_per, rounded, - discount = net.',
    of: ofLine((line, document) => moneyCell(signed(document, line.discountMinorUnits), document.currency)),
  },
  {
    name: 'net',
    kind: 'money',
    about: 'Amount without tax.',
    of: ({ document, netMinorUnits }) => moneyCell(signed(document, netMinorUnits), document.currency),
  },
  { name: 'currency', kind: 'text', about: 'Currency (ISO 4217).', of: ({ document }) => document.currency },
  { name: 'tax_code', kind: 'text', about: 'Tax code of the book.', of: ({ tax }) => tax?.taxCode ?? null },
  {
    name: 'tax_category',
    kind: 'text',
    about: 'Tax category (UN/EDIFACT 5305): S, Z, E, AE, K, G or O.',
    of: ({ tax }) => tax?.category ?? null,
  },
  {
    name: 'tax_rate',
    kind: 'decimal',
    about: 'Combined rate in percent.',
    of: ({ tax }) => (tax === undefined ? null : plainDecimal(tax.ratePercent || '0')),
  },
  { name: 'account', kind: 'text', about: 'Account that the journal books it to.', of: ({ account }) => account },
];

/** The account of discounts and charges on whole documents. */
export function discountAccount(accounts: ExportInput['accounts']): string {
  return accounts.discounts ?? accounts.income.default ?? '4000';
}

/** One row a line, and one for each discount or charge on a whole document, so that the column "net" sums to the register's. */
export function linesTable(input: ExportInput): Table {
  const rows = periodDocuments(input).flatMap((document): readonly Row[] => {
    const tax = (code: string) => document.taxes.find((group) => group.taxCode === code);
    return [
      ...document.lines.map((line) => ({
        document,
        line,
        kind: line.kind,
        text: line.what,
        netMinorUnits: line.netMinorUnits,
        account: line.incomeAccount,
        tax: tax(line.taxCode),
      })),
      ...document.allowances.map((each) => ({
        document,
        line: null,
        kind: each.charge ? 'document charge' : 'document discount',
        text: each.because,
        netMinorUnits: each.charge ? each.amountMinorUnits : -each.amountMinorUnits,
        account: discountAccount(input.accounts),
        tax: tax(each.taxCode),
      })),
    ];
  });
  return makeTable(
    'lines',
    'One row for each line of the documents of the period, and one for each discount or charge on a whole document.',
    columns,
    rows,
  );
}
