import { type ExportInput, inPeriod, moneyCell } from '../export-input.ts';
import { type Column, makeTable, type Table } from '../tables/table.ts';
import { type JournalEntry, type Posting, postJournal } from './post-journal.ts';

type Row = { readonly entry: JournalEntry; readonly posting: Posting };

const columns: readonly Column<Row>[] = [
  {
    name: 'entry',
    kind: 'text',
    about: 'The booking: L and the line of ledger.jsonl; debit and credit of an entry are equal.',
    of: ({ entry }) => `L${entry.sequence}`,
  },
  { name: 'day', kind: 'date', about: 'Day of the booking.', of: ({ entry }) => entry.day },
  {
    name: 'account',
    kind: 'text',
    about: 'Account, as mapped in book.json, accounts.',
    of: ({ posting }) => posting.account,
  },
  { name: 'text', kind: 'text', about: 'What is booked.', of: ({ posting }) => posting.text },
  {
    name: 'debit',
    kind: 'money',
    about: 'Amount on the debit side; empty on the other.',
    of: ({ entry, posting }) =>
      posting.amountMinorUnits > 0 ? moneyCell(posting.amountMinorUnits, entry.currency) : null,
  },
  {
    name: 'credit',
    kind: 'money',
    about: 'Amount on the credit side; empty on the other.',
    of: ({ entry, posting }) =>
      posting.amountMinorUnits < 0 ? moneyCell(-posting.amountMinorUnits, entry.currency) : null,
  },
  { name: 'currency', kind: 'text', about: 'Currency (ISO 4217).', of: ({ entry }) => entry.currency },
  { name: 'document', kind: 'text', about: 'Invoice, credit note or payment.', of: ({ entry }) => entry.document },
  { name: 'payer', kind: 'text', about: "The payer's short name in the book.", of: ({ entry }) => entry.payer },
];

/** One row a posting of the period: double entry, each booking balanced. */
export function journalTable(input: ExportInput): Table {
  return makeTable(
    'journal',
    'Double entry: one row for each posting of the period; each booking balances.',
    columns,
    postJournal(input)
      .filter((entry) => inPeriod(input, entry.day))
      .flatMap((entry) => entry.postings.map((posting) => ({ entry, posting }))),
  );
}
