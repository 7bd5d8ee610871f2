import { existsSync, readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { Problem } from '../problem.ts';
import { sha256 } from './digest.ts';
import { seriesNumber } from './issue-document.ts';
import { readLedger } from './ledger.ts';
import type { OpenBook } from './open-book.ts';

/** One thing that is not as the ledger says. */
export type Damage = { readonly where: string; readonly what: string; readonly whatToDo: string };

function filesBelow(folder: string, inside: string): readonly string[] {
  if (!existsSync(path.join(folder, inside))) return [];
  return readdirSync(path.join(folder, inside), { recursive: true, withFileTypes: true, encoding: 'utf8' })
    .filter((entry) => entry.isFile())
    .map((entry) => path.relative(folder, path.join(entry.parentPath, entry.name)));
}

/**
 * Everything in the book that was altered, is missing, is too many, or breaks the chain or a number series.
 * @param open the open book
 */
export function verifyBook(open: OpenBook): readonly Damage[] {
  let entries: ReturnType<typeof readLedger>;
  try {
    entries = readLedger(open);
  } catch (error) {
    if (!(error instanceof Problem)) throw error;
    return [{ where: error.where, what: error.what, whatToDo: error.whatToDo }];
  }
  const issued = entries.filter((entry) => entry.event === 'issued' || entry.event === 'credited');
  const spokenOf = new Set(issued.flatMap((entry) => entry.files.map((file) => file.path)));
  const damage: Damage[] = [];
  for (const { path: place, sha256: digest } of issued.flatMap((entry) => entry.files)) {
    const file = path.join(open.folder, place);
    if (!existsSync(file))
      damage.push({ where: place, what: 'The file is missing.', whatToDo: 'Put it back from a copy.' });
    else if (sha256(readFileSync(file)) !== digest)
      damage.push({
        where: place,
        what: 'The file was altered after it was issued.',
        whatToDo: 'Put the issued file back from a copy; correct by credit note.',
      });
  }
  for (const file of filesBelow(open.folder, 'issued')) {
    if (spokenOf.has(file)) continue;
    const number = path.basename(file, '.json');
    if (path.dirname(file) === path.join('issued', 'numbers') && issued.some((entry) => entry.number === number))
      continue;
    damage.push({
      where: file,
      what: 'The ledger does not speak of this file.',
      whatToDo: 'Move it out of issued/, or run `keyout bill` to finish what was interrupted.',
    });
  }
  return [
    ...damage,
    ...numberDamage(
      open,
      issued.map((entry) => ({ event: entry.event, number: entry.number, year: entry.day.slice(0, 4) })),
    ),
  ];
}

function numberDamage(
  open: OpenBook,
  issued: readonly { readonly event: string; readonly number: string; readonly year: string }[],
): readonly Damage[] {
  const damage: Damage[] = [];
  for (const [event, series] of [
    ['issued', open.book.numbering.invoice],
    ['credited', open.book.numbering.creditNote],
  ] as const) {
    const own = issued.filter((entry) => entry.event === event);
    const spans = series.yearly ? [...new Set(own.map((entry) => entry.year))] : [''];
    for (const year of spans) {
      const numbers = own.filter((entry) => year === '' || entry.year === year).map((entry) => entry.number);
      const doubled = numbers.filter((number, index) => numbers.indexOf(number) !== index);
      for (const number of doubled)
        damage.push({
          where: 'ledger.jsonl',
          what: `The number ${number} was given twice.`,
          whatToDo: 'Credit one of them.',
        });
      for (let place = 1; place <= new Set(numbers).size; place += 1) {
        const number = seriesNumber(series, year, place);
        if (!numbers.includes(number))
          damage.push({
            where: 'ledger.jsonl',
            what: `The number ${number} is missing from its series.`,
            whatToDo: 'Find the document, or note why the number was skipped.',
          });
      }
    }
  }
  return damage;
}
