import { type OpenDocument, openDocuments } from '../../pricing/aged-balances.ts';
import type { IssuedInvoice } from '../../records/issued-invoice.ts';
import { allPayments, type ExportInput, moneyCell, periodDocuments, signed } from '../export-input.ts';
import { type Column, makeTable, type Table } from './table.ts';

type Row = { readonly document: IssuedInvoice; readonly open: OpenDocument | undefined };

function statusOf({ document, open }: Row): string {
  if (document.type === 'credit note' || open === undefined) return 'credit note';
  if (open.balanceMinorUnits < 0) return 'in credit';
  if (open.balanceMinorUnits === 0)
    return open.paidMinorUnits === 0 && open.creditedMinorUnits > 0 ? 'credited' : 'paid';
  return open.paidMinorUnits > 0 || open.creditedMinorUnits > 0 ? 'part paid' : 'open';
}

const own = (minorUnits: (document: IssuedInvoice) => number) => (row: Row) =>
  moneyCell(signed(row.document, minorUnits(row.document)), row.document.currency);
const atEnd = (minorUnits: (open: OpenDocument) => number) => (row: Row) =>
  moneyCell(row.open === undefined ? 0 : minorUnits(row.open), row.document.currency);

const columns: readonly Column<Row>[] = [
  { name: 'number', kind: 'text', about: 'Number of the document.', of: ({ document }) => document.number },
  { name: 'type', kind: 'text', about: '"invoice" or "credit note".', of: ({ document }) => document.type },
  { name: 'issued', kind: 'date', about: 'Day of issue.', of: ({ document }) => document.issued },
  { name: 'supplied_from', kind: 'date', about: 'First day of work.', of: ({ document }) => document.supplied.from },
  { name: 'supplied_to', kind: 'date', about: 'Last day of work.', of: ({ document }) => document.supplied.to },
  { name: 'due', kind: 'date', about: 'Day on which it is due.', of: ({ document }) => document.due },
  { name: 'payer', kind: 'text', about: "The payer's short name in the book.", of: ({ document }) => document.payerId },
  {
    name: 'payer_name',
    kind: 'text',
    about: "The payer's name when it was issued.",
    of: ({ document }) => document.payer.name,
  },
  {
    name: 'payer_tax_identifier',
    kind: 'text',
    about: "The payer's VAT or GST number, if any.",
    of: ({ document }) => document.payer.taxIdentifier ?? null,
  },
  {
    name: 'payer_exemption',
    kind: 'text',
    about: "The payer's exemption certificate, if any.",
    of: ({ document }) => document.payer.exemptionCertificate ?? null,
  },
  {
    name: 'purchase_order',
    kind: 'text',
    about: 'Purchase order, if any.',
    of: ({ document }) => document.purchaseOrder ?? null,
  },
  {
    name: 'vehicles',
    kind: 'text',
    about: 'Vehicles, parted by " | ".',
    of: ({ document }) => document.vehicles.map((vehicle) => vehicle.text).join(' | '),
  },
  {
    name: 'jobs',
    kind: 'text',
    about: 'Jobs, parted by a space.',
    of: ({ document }) => document.vehicles.map((vehicle) => vehicle.job).join(' '),
  },
  {
    name: 'currency',
    kind: 'text',
    about: 'Currency of every amount in the row (ISO 4217).',
    of: ({ document }) => document.currency,
  },
  { name: 'net', kind: 'money', about: 'Amount without tax.', of: own((document) => document.totals.netMinorUnits) },
  { name: 'tax', kind: 'money', about: 'Tax.', of: own((document) => document.totals.taxMinorUnits) },
  {
    name: 'gross',
    kind: 'money',
    about: 'Amount with tax: net + tax.',
    of: own((document) => document.totals.grossMinorUnits),
  },
  {
    name: 'rounding',
    kind: 'money',
    about: 'Rounding that gross is adjusted by; gross + rounding is what is owed.',
    of: own((document) => document.totals.roundingMinorUnits ?? 0),
  },
  {
    name: 'paid',
    kind: 'money',
    about: 'Paid by the last day of the period, deposits named on the invoice included; 0 for credit notes.',
    of: atEnd((open) => open.paidMinorUnits),
  },
  {
    name: 'credited',
    kind: 'money',
    about: 'Taken off by credit notes issued by the last day of the period; 0 for credit notes.',
    of: atEnd((open) => open.creditedMinorUnits),
  },
  {
    name: 'balance',
    kind: 'money',
    about: 'Owed on the last day of the period: gross + rounding - paid - credited; 0 for credit notes.',
    of: atEnd((open) => open.balanceMinorUnits),
  },
  {
    name: 'status',
    kind: 'text',
    about: '"open", "part paid", "paid", "credited" or "in credit" on the last day of the period; "credit note".',
    of: statusOf,
  },
  {
    name: 'corrects',
    kind: 'text',
    about: 'For a credit note, the number of its invoice.',
    of: ({ document }) => document.corrects?.number ?? null,
  },
];

/** One row an invoice or credit note issued in the period. */
export function registerTable(input: ExportInput): Table {
  const open = new Map(openDocuments(input.documents, allPayments(input), input.to).map((each) => [each.number, each]));
  return makeTable(
    'register',
    'One row for each invoice and credit note issued in the period; amounts of credit notes are negative.',
    columns,
    periodDocuments(input).map((document) => ({ document, open: open.get(document.number) })),
  );
}
