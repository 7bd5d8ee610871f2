import { currencyDigits } from '../../quantities/currency-digits.ts';
import { decimalText, millionths } from '../../quantities/decimal.ts';
import { majorText } from '../../quantities/major-units.ts';
import { currencyOfPayments, type ExportInput, inPeriod, moneyCell } from '../export-input.ts';
import { type Column, makeTable, type Table } from '../tables/table.ts';
import { type JournalEntry, type Posting, postJournal } from './post-journal.ts';

type Total = {
  readonly file: string;
  readonly what: string;
  readonly count: number;
  readonly currency: string | null;
  readonly amount: string | null;
  readonly comparedWith: string | null;
  readonly compared: string | null;
};

const columns: readonly Column<Total>[] = [
  { name: 'file', kind: 'text', about: 'File that is counted and summed.', of: ({ file }) => file },
  { name: 'what', kind: 'text', about: 'What of it.', of: ({ what }) => what },
  { name: 'count', kind: 'integer', about: 'How many rows.', of: ({ count }) => count },
  { name: 'currency', kind: 'text', about: 'Currency or unit of the sum.', of: ({ currency }) => currency },
  { name: 'amount', kind: 'decimal', about: 'Sum of the column in that file.', of: ({ amount }) => amount },
  { name: 'compared_with', kind: 'text', about: 'What it must equal.', of: ({ comparedWith }) => comparedWith },
  { name: 'compared_amount', kind: 'decimal', about: 'That sum, computed by itself.', of: ({ compared }) => compared },
  {
    name: 'difference',
    kind: 'decimal',
    about: 'amount - compared_amount: 0 unless something is wrong.',
    of: ({ amount, compared }) =>
      amount === null || compared === null ? null : decimalText(millionths(amount) - millionths(compared)),
  },
];

type Pick = { readonly count: number; readonly amount: string };

/** Sum of money columns of a table's rows of one currency, further columns taken off, as the table shows them. */
function sumOf(table: Table, currency: string, plus: readonly string[], minus: readonly string[] = []): Pick {
  const place = (name: string) => table.columns.findIndex((column) => column.name === name);
  const rows = table.rows.filter((row) => row[place('currency')] === currency);
  const cell = (row: Table['rows'][number], name: string) => millionths(String(row[place(name)] ?? '0'));
  const sum = rows.reduce(
    (all, row) =>
      all +
      plus.reduce((each, name) => each + cell(row, name), 0n) -
      minus.reduce((each, name) => each + cell(row, name), 0n),
    0n,
  );
  return { count: rows.length, amount: fixed(sum, currency) };
}

function fixed(value: bigint, currency: string): string {
  const digits = currencyDigits(currency);
  return majorText(Number(value / 10n ** BigInt(6 - digits)), digits);
}

const only = (table: Table, column: string, value: string): Table => ({
  ...table,
  rows: table.rows.filter((row) => row[table.columns.findIndex((each) => each.name === column)] === value),
});

/** What the ledger says of the period, in whole minor units: counted and summed from its lines, not from the files. */
function ledgerSums(input: ExportInput, currency: string) {
  const documents = new Map(input.documents.map((each) => [each.number, each]));
  const sum = (event: 'issued' | 'credited') => {
    const own = input.entries.filter(
      (entry) =>
        entry.event === event && inPeriod(input, entry.day) && documents.get(entry.number)?.currency === currency,
    );
    return own.reduce((all, entry) => all + ('grossMinorUnits' in entry ? entry.grossMinorUnits : 0), 0);
  };
  const currencyOf = currencyOfPayments(input);
  const paid = input.entries.reduce(
    (all, entry) =>
      entry.event === 'paid' && inPeriod(input, entry.day) && currencyOf(entry) === currency
        ? all + entry.amountMinorUnits
        : all,
    0,
  );
  return { invoiced: sum('issued'), credited: sum('credited'), paid };
}

function accountBalance(journal: readonly JournalEntry[], role: Posting['role'], currency: string): number {
  return journal
    .filter((entry) => entry.currency === currency)
    .flatMap((entry) => entry.postings)
    .filter((posting) => posting.role === role)
    .reduce((sum, posting) => sum + posting.amountMinorUnits, 0);
}

function totalsOf(
  input: ExportInput,
  tables: ReadonlyMap<string, Table>,
  posted: readonly JournalEntry[],
  currency: string,
): readonly Total[] {
  const table = (name: string) => tables.get(name) ?? { name, about: '', columns: [], rows: [] };
  const money = (minorUnits: number) => moneyCell(minorUnits, currency);
  const total = (
    name: string,
    what: string,
    sum: Pick,
    comparedWith: string | null,
    compared: string | null,
  ): Total => ({
    file: `${name}.csv`,
    what,
    ...sum,
    currency,
    comparedWith,
    compared,
  });
  const register = table('register');
  const invoices = sumOf(only(register, 'type', 'invoice'), currency, ['gross']);
  const credits = sumOf(only(register, 'type', 'credit note'), currency, ['gross']);
  const net = sumOf(register, currency, ['net']);
  const tax = sumOf(register, currency, ['tax']);
  const lines = table('lines');
  const summary = table('tax-summary');
  const payments = table('payments');
  const aged = table('aged-balances');
  const days = ['current', 'days_1_to_30', 'days_31_to_60', 'days_61_to_90', 'days_over_90'];
  const owed = sumOf(aged, currency, days);
  const credit = sumOf(aged, currency, ['credit']);
  const ledger = ledgerSums(input, currency);
  const journal = table('journal');
  return [
    total('register', 'invoices, gross', invoices, 'ledger.jsonl, invoices issued', money(ledger.invoiced)),
    total('register', 'credit notes, gross', credits, 'ledger.jsonl, credit notes issued', money(-ledger.credited)),
    total(
      'register',
      'net + tax',
      sumOf(register, currency, ['net', 'tax']),
      'register.csv, gross',
      sumOf(register, currency, ['gross']).amount,
    ),
    total('lines', 'net', sumOf(lines, currency, ['net']), 'register.csv, net', net.amount),
    total(
      'tax-summary',
      'taxable and untaxed base',
      sumOf(summary, currency, ['taxable_base', 'untaxed_base']),
      'register.csv, net',
      net.amount,
    ),
    total('tax-summary', 'tax', sumOf(summary, currency, ['tax']), 'register.csv, tax', tax.amount),
    total(
      'tax-jurisdictions',
      'tax',
      sumOf(table('tax-jurisdictions'), currency, ['tax']),
      'tax-summary.csv, tax',
      sumOf(summary, currency, ['tax']).amount,
    ),
    total(
      'payments',
      'amount',
      sumOf(payments, currency, ['amount']),
      'ledger.jsonl, payments received',
      money(ledger.paid),
    ),
    total(
      'payments',
      'allocated + rest',
      sumOf(payments, currency, ['allocated', 'rest']),
      'payments.csv, amount',
      sumOf(payments, currency, ['amount']).amount,
    ),
    total(
      'payment-allocations',
      'amount',
      sumOf(table('payment-allocations'), currency, ['amount']),
      'payments.csv, allocated',
      sumOf(payments, currency, ['allocated']).amount,
    ),
    total(
      'aged-balances',
      'owed, all ages',
      owed,
      'ledger.jsonl, balance of the receivable account',
      money(accountBalance(posted, 'receivable', currency)),
    ),
    total(
      'aged-balances',
      'credit',
      credit,
      'ledger.jsonl, balance of the customer-credit account',
      money(-accountBalance(posted, 'customer credit', currency)),
    ),
    total(
      'aged-balances',
      'total',
      sumOf(aged, currency, ['total']),
      'aged-balances.csv, owed less credit',
      sumOf(aged, currency, days, ['credit']).amount,
    ),
    total('open-invoices', 'balance', sumOf(table('open-invoices'), currency, ['balance']), null, null),
    total(
      'journal',
      'debit',
      sumOf(journal, currency, ['debit']),
      'journal.csv, credit',
      sumOf(journal, currency, ['credit']).amount,
    ),
  ];
}

/** How many documents and payments the files have beside how many the ledger speaks of. */
function countsAgainstLedger(input: ExportInput, byName: ReadonlyMap<string, Table>): readonly Total[] {
  const compared = (
    name: string,
    what: string,
    table: Table | undefined,
    event: 'issued' | 'credited' | 'paid',
  ): Total => {
    const count = table?.rows.length ?? 0;
    const own = input.entries.filter((entry) => entry.event === event && inPeriod(input, entry.day)).length;
    return {
      file: `${name}.csv`,
      what,
      count,
      currency: null,
      amount: String(count),
      comparedWith: `ledger.jsonl, lines "${event}" of the period`,
      compared: String(own),
    };
  };
  const register = byName.get('register');
  const ofType = (type: string) => (register === undefined ? undefined : only(register, 'type', type));
  return [
    compared('register', 'how many invoices', ofType('invoice'), 'issued'),
    compared('register', 'how many credit notes', ofType('credit note'), 'credited'),
    compared('payments', 'how many payments', byName.get('payments'), 'paid'),
  ];
}

/**
 * Counts and sums that a bookkeeper ticks off: each file's sums beside what they must equal, from another file or from the ledger.
 * @param input documents, ledger and accounts
 * @param tables every other table of the export
 */
export function controlTotalsTable(input: ExportInput, tables: readonly Table[]): Table {
  const byName = new Map(tables.map((table) => [table.name, table]));
  const posted = postJournal(input);
  const currencies = [...new Set([input.currency, ...input.documents.map((each) => each.currency)])].sort();
  const trips = ['mi', 'km'].flatMap((unit): readonly Total[] => {
    const own = input.trips.filter((trip) => trip.unit === unit);
    const distance = decimalText(own.reduce((sum, trip) => sum + millionths(trip.distance), 0n));
    return own.length === 0
      ? []
      : [
          {
            file: 'trips.csv',
            what: 'distance',
            count: own.length,
            currency: unit,
            amount: distance,
            comparedWith: null,
            compared: null,
          },
        ];
  });
  const counts = tables.map((table) => ({
    file: `${table.name}.csv`,
    what: 'rows below the column headings',
    count: table.rows.length,
    currency: null,
    amount: null,
    comparedWith: null,
    compared: null,
  }));
  return makeTable(
    'control-totals',
    'Counts and sums to tick off; every difference is 0 unless something is wrong.',
    columns,
    [
      ...countsAgainstLedger(input, byName),
      ...currencies.flatMap((currency) => totalsOf(input, byName, posted, currency)),
      ...trips,
      ...counts,
    ],
  );
}
