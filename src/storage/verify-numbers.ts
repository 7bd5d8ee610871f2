import type { LedgerEntry } from '../records/ledger-entry.ts';
import type { Damage } from './damage.ts';
import { placeOfNumber } from './number-series.ts';
import type { OpenBook } from './open-book.ts';

const namedMax = 5;

/**
 * Numbers given twice, and numbers missing between the first and the last of a series.
 * @param open the open book
 * @param entries the ledger
 */
export function numberDamage(open: OpenBook, entries: readonly LedgerEntry[]): readonly Damage[] {
  const series = new Map<string, Map<number, string[]>>();
  for (const entry of entries) {
    if (entry.event !== 'issued' && entry.event !== 'credited') continue;
    const { stem, place } = entry.series ?? placeOfNumber(open.book, entry.number, entry.day.slice(0, 4));
    const places = series.get(stem) ?? new Map<number, string[]>();
    places.set(place, [...(places.get(place) ?? []), entry.number]);
    series.set(stem, places);
  }
  return [...series].flatMap(([stem, places]) => [...doubled(places), ...gaps(open, stem, places)]);
}

function doubled(places: ReadonlyMap<number, readonly string[]>): readonly Damage[] {
  return [...places.values()]
    .filter((numbers) => numbers.length > 1)
    .map((numbers) => ({
      where: 'ledger.jsonl',
      what: `The number ${numbers[0]} was given ${numbers.length === 2 ? 'twice' : `${numbers.length} times`}.`,
      whatToDo: 'Credit all but one of them.',
    }));
}

function gaps(open: OpenBook, stem: string, places: ReadonlyMap<number, readonly string[]>): readonly Damage[] {
  const { numbering } = open.book;
  const own = [numbering, ...numbering.vans]
    .flatMap((each) => [each.invoice, each.creditNote])
    .find((each) => stem === each.prefix || (each.yearly && stem.slice(0, -5) === each.prefix));
  const given = [...places.keys()].sort((one, other) => one - other);
  // a series that the book no longer names may have begun anywhere
  const first = Math.min(own?.start ?? given[0] ?? 1, given[0] ?? 1);
  const width = [...places.values()][0]?.[0]?.slice(stem.length).length ?? 1;
  const missing: string[] = [];
  let expected = first;
  for (const index of given) {
    for (; expected < index && missing.length <= namedMax; expected += 1)
      missing.push(`${stem}${String(expected).padStart(width, '0')}`);
    expected = index + 1;
  }
  if (missing.length === 0) return [];
  const named = missing.slice(0, namedMax).join(', ');
  return [
    {
      where: 'ledger.jsonl',
      what: `${missing.length > namedMax ? `${named} and more are` : `${named} ${missing.length === 1 ? 'is' : 'are'}`} missing from the series.`,
      whatToDo: 'Find the document and put it back from a copy, or note why the number was skipped.',
    },
  ];
}
