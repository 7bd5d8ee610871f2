import type { Payment } from '../../pricing/aged-balances.ts';
import { currencyOfPayments, type ExportInput, moneyCell, periodPayments } from '../export-input.ts';
import { type Column, makeTable, type Table } from './table.ts';

type Row = { readonly payment: Payment; readonly currency: string };
type Part = Row & { readonly invoice: string; readonly amountMinorUnits: number };

const allocated = (payment: Payment) => payment.allocations.reduce((sum, part) => sum + part.amountMinorUnits, 0);

const columns: readonly Column<Row>[] = [
  { name: 'payment', kind: 'text', about: 'Number of the payment.', of: ({ payment }) => payment.payment },
  { name: 'day', kind: 'date', about: 'Day on which it was received.', of: ({ payment }) => payment.day },
  { name: 'payer', kind: 'text', about: "The payer's short name in the book.", of: ({ payment }) => payment.payer },
  { name: 'method', kind: 'text', about: 'How it was paid.', of: ({ payment }) => payment.method },
  { name: 'reference', kind: 'text', about: 'Its reference, if any.', of: ({ payment }) => payment.reference ?? null },
  { name: 'currency', kind: 'text', about: 'Currency (ISO 4217).', of: ({ currency }) => currency },
  {
    name: 'amount',
    kind: 'money',
    about: "What was received; negative for money paid back or a payment taken back, 0 where a payer's credit is used.",
    of: ({ payment, currency }) => moneyCell(payment.amountMinorUnits, currency),
  },
  {
    name: 'allocated',
    kind: 'money',
    about: 'What of it was set against invoices.',
    of: ({ payment, currency }) => moneyCell(allocated(payment), currency),
  },
  {
    name: 'rest',
    kind: 'money',
    about: "What of it stands to the payer's credit: amount - allocated.",
    of: ({ payment, currency }) => moneyCell(payment.amountMinorUnits - allocated(payment), currency),
  },
];

const notes: readonly Column<Row>[] = [
  {
    name: 'takes_back',
    kind: 'text',
    about: 'The payment that this one takes back, recorded by mistake.',
    of: ({ payment }) => payment.reverses ?? null,
  },
  {
    name: 'because',
    kind: 'text',
    about: 'Why, where a reason was given.',
    of: ({ payment }) => payment.because ?? null,
  },
];

const parts: readonly Column<Part>[] = [
  { name: 'payment', kind: 'text', about: 'Number of the payment.', of: ({ payment }) => payment.payment },
  { name: 'day', kind: 'date', about: 'Day on which it was received.', of: ({ payment }) => payment.day },
  { name: 'invoice', kind: 'text', about: 'Invoice it was set against.', of: ({ invoice }) => invoice },
  { name: 'currency', kind: 'text', about: 'Currency (ISO 4217).', of: ({ currency }) => currency },
  {
    name: 'amount',
    kind: 'money',
    about: 'How much of the payment.',
    of: ({ amountMinorUnits, currency }) => moneyCell(amountMinorUnits, currency),
  },
];

function rows(input: ExportInput): readonly Row[] {
  const currencyOf = currencyOfPayments(input);
  return periodPayments(input).map((payment) => ({ payment, currency: currencyOf(payment) }));
}

/** One row a payment received in the period. */
export function paymentsTable(input: ExportInput): Table {
  return makeTable('payments', 'One row for each payment received in the period.', [...columns, ...notes], rows(input));
}

/** One row for each invoice that a payment was set against. */
export function allocationsTable(input: ExportInput): Table {
  return makeTable(
    'payment-allocations',
    'One row for each invoice that a payment of the period was set against.',
    parts,
    rows(input).flatMap((row) => row.payment.allocations.map((part) => ({ ...row, ...part }))),
  );
}
