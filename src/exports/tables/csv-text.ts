import { stringify } from 'csv-stringify/sync';
import type { Cell, ColumnKind, Table } from './table.ts';

/** How a file of comma-separated values is written. */
export type CsvProfile = {
  /** true: decimal comma, fields parted by semicolons */
  readonly decimalComma: boolean;
  /** a mark by which desktop spreadsheets know UTF-8 */
  readonly byteOrderMark: boolean;
};

// a spreadsheet runs a cell that begins so (OWASP, "CSV Injection"), with the full-width forms that some read alike
const runs = /^'*[\s\u200B\uFEFF]*[=+\-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20]/u;

/**
 * Text that no spreadsheet takes for a formula: an apostrophe goes in front of what one would run.
 * @param text as the book has it
 */
export function neutralText(text: string): string {
  return runs.test(text) ? `'${text}` : text;
}

function cellText(cell: Cell, kind: ColumnKind, decimalComma: boolean): string {
  if (cell === null) return '';
  if (kind === 'text') return neutralText(String(cell));
  const text = String(cell);
  const fits = kind === 'date' ? /^\d{4}-\d{2}-\d{2}$/ : kind === 'integer' ? /^-?\d+$/ : /^-?\d+(\.\d+)?$/;
  if (!fits.test(text)) throw new Error(`"${text}" is not of the kind ${kind}`);
  return decimalComma && (kind === 'money' || kind === 'decimal') ? text.replace('.', ',') : text;
}

/**
 * A table as comma-separated values: RFC 4180, lines end with CR LF, UTF-8, a head line, ISO dates, no thousands separators.
 * @param table the table
 * @param profile how decimals, fields and the beginning of the file are marked
 */
export function csvText(table: Table, profile: CsvProfile): string {
  const head = table.columns.map((column) => column.name);
  const rows = table.rows.map((row) =>
    row.map((cell, index) => cellText(cell, table.columns[index]?.kind ?? 'text', profile.decimalComma)),
  );
  return stringify([head, ...rows], {
    delimiter: profile.decimalComma ? ';' : ',',
    record_delimiter: '\r\n',
    quoted_match: /[\r\n]/,
    bom: profile.byteOrderMark,
  });
}
