import { type AgeBucket, agedBalances, type OpenDocument, type PayerBalance } from '../../pricing/aged-balances.ts';
import { allPayments, type ExportInput, moneyCell } from '../export-input.ts';
import { type Column, makeTable, type Table } from './table.ts';

const bucket = (name: string, key: AgeBucket, about: string): Column<PayerBalance> => ({
  name,
  kind: 'money',
  about,
  of: ({ buckets, currency }) => moneyCell(buckets[key], currency),
});

const columns: readonly Column<PayerBalance>[] = [
  { name: 'payer', kind: 'text', about: "The payer's short name in the book.", of: ({ payerId }) => payerId },
  {
    name: 'payer_name',
    kind: 'text',
    about: "The payer's name on its last document.",
    of: ({ payerName }) => payerName,
  },
  { name: 'currency', kind: 'text', about: 'Currency (ISO 4217).', of: ({ currency }) => currency },
  bucket('current', 'current', 'Not yet due on the last day of the period.'),
  bucket('days_1_to_30', '1-30', 'Overdue by 1 to 30 days.'),
  bucket('days_31_to_60', '31-60', 'Overdue by 31 to 60 days.'),
  bucket('days_61_to_90', '61-90', 'Overdue by 61 to 90 days.'),
  bucket('days_over_90', 'over 90', 'Overdue by more than 90 days.'),
  {
    name: 'credit',
    kind: 'money',
    about: "What stands to the payer's credit: paid or credited beyond its invoices.",
    of: ({ creditMinorUnits, currency }) => moneyCell(creditMinorUnits, currency),
  },
  {
    name: 'total',
    kind: 'money',
    about: 'What the payer owes in all: the five columns of days less credit.',
    of: ({ totalMinorUnits, currency }) => moneyCell(totalMinorUnits, currency),
  },
];

const open: readonly Column<OpenDocument>[] = [
  { name: 'number', kind: 'text', about: 'Number of the invoice.', of: ({ number }) => number },
  { name: 'payer', kind: 'text', about: "The payer's short name in the book.", of: ({ payerId }) => payerId },
  { name: 'issued', kind: 'date', about: 'Day of issue.', of: ({ issued }) => issued },
  { name: 'due', kind: 'date', about: 'Day on which it is due.', of: ({ due }) => due },
  {
    name: 'days_overdue',
    kind: 'integer',
    about: 'Days after the due date on the last day of the period; 0 when not yet due.',
    of: ({ daysOverdue }) => Math.max(0, daysOverdue),
  },
  { name: 'currency', kind: 'text', about: 'Currency (ISO 4217).', of: ({ currency }) => currency },
  {
    name: 'balance',
    kind: 'money',
    about: 'What is owed on it; negative when more was paid and credited than charged.',
    of: ({ balanceMinorUnits, currency }) => moneyCell(balanceMinorUnits, currency),
  },
];

function balances(input: ExportInput): readonly PayerBalance[] {
  return agedBalances(input.documents, allPayments(input), input.to);
}

/** One row a payer: what it owes by age on the last day of the period, whenever it was billed. */
export function agedBalancesTable(input: ExportInput): Table {
  return makeTable(
    'aged-balances',
    'One row for each payer and currency: what is owed on the last day of the period, by days overdue, whenever it was billed.',
    columns,
    balances(input),
  );
}

/** One row an invoice that is not settled on the last day of the period. */
export function openInvoicesTable(input: ExportInput): Table {
  return makeTable(
    'open-invoices',
    'One row for each invoice whose balance is not zero on the last day of the period, whenever it was issued.',
    open,
    balances(input).flatMap((each) => each.open),
  );
}
