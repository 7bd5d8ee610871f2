import { existsSync, readFileSync } from 'node:fs';
import path from 'node:path';
import type { ExportInput } from '../exports/export-input.ts';
import { Problem } from '../problem.ts';
import { isCalendarDate } from '../quantities/calendar-date.ts';
import { readIssued } from '../storage/issued.ts';
import { readLedger } from '../storage/ledger.ts';
import { type OpenBook, openBook } from '../storage/open-book.ts';
import { listTrips } from '../storage/trips.ts';
import { verifyBook } from '../storage/verify-book.ts';
import { writeFolder } from '../storage/write-folder.ts';
import { askLine } from './ask-in-words.ts';
import type { Call, Command, World } from './command.ts';

const words = { from: 'first', to: 'last' } as const;
const dayProblem = (text: string) =>
  isCalendarDate(text) ? null : `"${text}" is not a date that exists; write it like 2026-11-30.`;

async function dayOf(call: Call, world: World, name: 'from' | 'to'): Promise<string> {
  const given = call.options[name];
  if (typeof given !== 'string') {
    if (world.mayAsk) return askLine(world, `The ${words[name]} day of the period (2026-11-30)`, dayProblem);
    throw new Problem(
      `The ${words[name]} day of the period is missing.`,
      `keyout export --${name}`,
      'Write the period like --from 2026-11-01 --to 2026-11-30.',
      2,
    );
  }
  if (!isCalendarDate(given))
    throw new Problem(
      `"${given}" is not a date that exists.`,
      `keyout export --${name}`,
      'Write it like 2026-11-30.',
      2,
    );
  return given;
}

async function periodOf(call: Call, world: World): Promise<{ readonly from: string; readonly to: string }> {
  const period = { from: await dayOf(call, world, 'from'), to: await dayOf(call, world, 'to') };
  if (period.from > period.to)
    throw new Problem('The period ends before it begins.', 'keyout export', 'Write the earlier day after --from.', 2);
  return period;
}

// what stands there is the book itself; only out/ holds what can be made again
function refuseInsideRecords(book: OpenBook, folder: string): void {
  const [first] = path.relative(path.resolve(book.folder), path.resolve(folder)).split(path.sep);
  if (first !== undefined && ['issued', 'jobs', 'payers', 'photos', 'templates', 'trips'].includes(first))
    throw new Problem(
      'The folder lies among the records of the book.',
      'keyout export --out',
      'Name a folder outside the book, or leave --out away: the files then go into its out/ folder.',
      2,
    );
}

// figures from an altered book would look as sound as any; a sheet that was printed again moves no money
function refuseDamaged(book: OpenBook): void {
  const damage = verifyBook(book).filter((each) => !each.where.startsWith('out/'));
  const first = damage[0];
  if (first !== undefined)
    throw new Problem(
      `The book is not as it was written, so nothing is exported: ${first.what}${damage.length > 1 ? ` (and ${damage.length - 1} more)` : ''}`,
      first.where,
      `${first.whatToDo} \`keyout verify\` lists everything.`,
      1,
    );
}

function inputOf(book: OpenBook, period: { readonly from: string; readonly to: string }): ExportInput {
  const issued = readIssued(book);
  const structured = issued.flatMap((document): readonly (readonly [string, string])[] => {
    const file = path.join(book.folder, path.dirname(document.recordPath), 'invoice.xml');
    return existsSync(file) ? [[document.number, readFileSync(file, 'utf8')]] : [];
  });
  return {
    ...period,
    documents: issued.map((document) => document.invoice),
    entries: readLedger(book),
    trips: listTrips(book, period),
    structured: new Map(structured),
    accounts: book.book.accounts,
    currency: book.book.currency,
  };
}

/** `keyout export`: the bookkeeper's files for a period, in one folder, the same bytes each time. */
export const exportCommand: Command = {
  name: 'export',
  words: '',
  summary: "the bookkeeper's files for a period",
  options: {
    from: { type: 'string', takes: 'DATE', help: 'first day of the period' },
    to: { type: 'string', takes: 'DATE', help: 'last day of the period' },
    out: { type: 'string', takes: 'DIR', help: 'folder to make (default: out/export-FROM-TO in the book)' },
    'decimal-comma': { type: 'boolean', help: 'decimal commas, fields parted by semicolons' },
    'no-bom': { type: 'boolean', help: 'no byte-order mark at the beginning of the files' },
  },
  run: async (call, world) => {
    const period = await periodOf(call, world);
    const book = openBook(world.bookFolder);
    refuseDamaged(book);
    const { exportFiles, isExportedFile } = await import('../exports/export-files.ts');
    const files = exportFiles(inputOf(book, period), {
      decimalComma: call.options['decimal-comma'] === true,
      byteOrderMark: call.options['no-bom'] !== true,
    });
    const out = call.options.out;
    const folder = typeof out === 'string' ? out : path.join(book.folder, 'out', `export-${period.from}-${period.to}`);
    refuseInsideRecords(book, folder);
    writeFolder(folder, files, isExportedFile);
    const names = [...files.keys()];
    const structured = names.filter((name) => name.startsWith('structured/')).length;
    world.say(
      world.json
        ? JSON.stringify({ ...period, folder, files: names }, null, 2)
        : `${names.length - structured} files and ${structured} structured documents in ${folder}\nBegin with control-totals.csv; columns.csv says what each column means.`,
    );
    return 0;
  },
};
