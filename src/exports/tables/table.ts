/** How a cell is written: money and decimal are plain decimals with a dot until a profile says otherwise. */
export type ColumnKind = 'text' | 'date' | 'money' | 'decimal' | 'integer';

/** A cell: text, a whole number, or nothing. Money and decimals are text such as "-12.50". */
export type Cell = string | number | null;

/** A column with the sentence that documents it and the value it takes from a row's source. */
export type Column<Source> = {
  readonly name: string;
  readonly kind: ColumnKind;
  readonly about: string;
  readonly of: (source: Source) => Cell;
};

/** The neutral table that feeds every file: nothing left to compute, only to write. */
export type Table = {
  /** file name without its ending */
  readonly name: string;
  readonly about: string;
  readonly columns: readonly { readonly name: string; readonly kind: ColumnKind; readonly about: string }[];
  readonly rows: readonly (readonly Cell[])[];
};

/**
 * A table from its sources, one row each.
 * @param name file name without its ending
 * @param about one sentence: what a row is
 * @param columns how each cell comes about
 * @param sources what the rows are made from, in order
 */
export function makeTable<Source>(
  name: string,
  about: string,
  columns: readonly Column<Source>[],
  sources: readonly Source[],
): Table {
  return {
    name,
    about,
    columns: columns.map(({ of: _of, ...column }) => column),
    rows: sources.map((source) => columns.map((column) => column.of(source))),
  };
}
