import type { IssuedInvoice } from '../records/issued-invoice.ts';
import { type ExportInput, periodDocuments } from './export-input.ts';
import { controlTotalsTable } from './ledger-files/control-totals.ts';
import { journalTable } from './ledger-files/journal-table.ts';
import { structuredInvoice } from './structured/structured-invoice.ts';
import { agedBalancesTable, openInvoicesTable } from './tables/balances-tables.ts';
import { type CsvProfile, csvText } from './tables/csv-text.ts';
import { linesTable } from './tables/lines-table.ts';
import { allocationsTable, paymentsTable } from './tables/payments-tables.ts';
import { registerTable } from './tables/register-table.ts';
import { type Column, makeTable, type Table } from './tables/table.ts';
import { taxJurisdictionsTable, taxSummaryTable } from './tables/tax-tables.ts';
import { tripSharesTable, tripsTable } from './tables/trips-tables.ts';

type Missing = { readonly number: string; readonly lacks: string };

const missing: readonly Column<Missing>[] = [
  { name: 'number', kind: 'text', about: 'Invoice or credit note of the period.', of: ({ number }) => number },
  { name: 'lacks', kind: 'text', about: 'What its data lack, where, and what to do.', of: ({ lacks }) => lacks },
];

type Described = { readonly table: Table; readonly column: Table['columns'][number] };

const described: readonly Column<Described>[] = [
  { name: 'file', kind: 'text', about: 'File.', of: ({ table }) => `${table.name}.csv` },
  { name: 'column', kind: 'text', about: 'Column.', of: ({ column }) => column.name },
  {
    name: 'kind',
    kind: 'text',
    about: '"text", "date" (YYYY-MM-DD), "money" (decimals of the currency), "decimal" or "integer".',
    of: ({ column }) => column.kind,
  },
  { name: 'meaning', kind: 'text', about: 'What it holds.', of: ({ column }) => column.about },
];

function columnsTable(tables: readonly Table[]): Table {
  const about = 'What every column of every file means.';
  const rows = (all: readonly Table[]) => all.flatMap((table) => table.columns.map((column) => ({ table, column })));
  const own = makeTable('columns', about, described, []);
  return makeTable('columns', about, described, rows([...tables, own]));
}

type Structured = ReadonlyMap<string, ReturnType<typeof structuredInvoice>>;

function structuredFiles(input: ExportInput): Structured {
  const file = (document: IssuedInvoice) => {
    const issued = input.structured.get(document.number);
    return issued === undefined ? structuredInvoice(document) : { xml: issued };
  };
  return new Map(periodDocuments(input).map((document) => [document.number, file(document)]));
}

const tableNames = [
  'register',
  'lines',
  'tax-summary',
  'tax-jurisdictions',
  'payments',
  'payment-allocations',
  'aged-balances',
  'open-invoices',
  'trips',
  'trip-shares',
  'journal',
  'without-structured-file',
  'control-totals',
  'columns',
] as const;
const fileNames: ReadonlySet<string> = new Set(['README.txt', ...tableNames.map((name) => `${name}.csv`)]);

/** Every table of a period, control totals and the description of the columns last. */
function exportTables(input: ExportInput, structured: Structured): readonly Table[] {
  const lacking = [...structured].flatMap(([number, file]) => ('lacks' in file ? [{ number, lacks: file.lacks }] : []));
  const tables = [
    registerTable(input),
    linesTable(input),
    taxSummaryTable(input),
    taxJurisdictionsTable(input),
    paymentsTable(input),
    allocationsTable(input),
    agedBalancesTable(input),
    openInvoicesTable(input),
    tripsTable(input),
    tripSharesTable(input),
    journalTable(input),
    makeTable(
      'without-structured-file',
      'One row for each document of the period that has no file in structured/, with the reason.',
      missing,
      lacking,
    ),
  ];
  const all = [...tables, controlTotalsTable(input, tables)];
  return [...all, columnsTable(all)];
}

function readme(input: ExportInput, tables: readonly Table[], profile: CsvProfile): string {
  return [
    `Period ${input.from} to ${input.to}, both days included.`,
    '',
    ...tables.map((table) => `${`${table.name}.csv`.padEnd(30)} ${table.about}`),
    `${'structured/NUMBER.xml'.padEnd(30)} Each document as UBL 2.1 following EN 16931, where its data allow one.`,
    '',
    `Files end in .csv: RFC 4180, fields parted by ${profile.decimalComma ? 'semicolons' : 'commas'}, lines ended by CR LF, UTF-8 ${profile.byteOrderMark ? 'with' : 'without'} a byte-order mark.`,
    `Dates are YYYY-MM-DD. Decimals have a ${profile.decimalComma ? 'comma' : 'dot'}; there are no thousands separators and no currency signs.`,
    'Credit notes count with a minus sign, so that columns sum.',
    'Text that a spreadsheet would run as a formula (it begins with = + - @, their full-width forms, a tab or a line end) has an apostrophe in front, which is not part of it. Numbers never have one.',
    'Begin with control-totals.csv: every difference there is 0 unless something is wrong. columns.csv says what each column means.',
    '',
  ].join('\r\n');
}

/**
 * Every file of a period by its path inside the export folder: the same input gives the same bytes.
 * @param input documents, ledger, trips and accounts
 * @param profile how the CSV files are written
 */
export function exportFiles(input: ExportInput, profile: CsvProfile): ReadonlyMap<string, string> {
  const structured = structuredFiles(input);
  const tables = exportTables(input, structured);
  const documents = [...structured].flatMap(([number, file]): readonly (readonly [string, string])[] =>
    'xml' in file ? [[`structured/${number}.xml`, file.xml]] : [],
  );
  return new Map([
    ['README.txt', readme(input, tables, profile)],
    ...tables.map((table) => [`${table.name}.csv`, csvText(table, profile)] as const),
    ...documents,
  ]);
}

/**
 * Whether a file is one that an export writes, so that a later export may replace it.
 * @param file path inside the export folder
 */
export function isExportedFile(file: string): boolean {
  return fileNames.has(file) || /^structured\/[A-Z][A-Z0-9-]*\.xml$/.test(file);
}
