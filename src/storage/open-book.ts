import { existsSync, readdirSync } from 'node:fs';
import path from 'node:path';
import { Problem } from '../problem.ts';
import { type Book, book } from '../records/book.ts';
import { type DeviceProfiles, deviceProfiles } from '../records/device-profile.ts';
import { type Payer, payer } from '../records/payer.ts';
import { type RateCard, rateCard } from '../records/rate-card.ts';
import { readRecord } from '../records/read-record.ts';
import { readJson } from './read-json.ts';

/** A book that was read whole. */
export type OpenBook = {
  readonly folder: string;
  readonly book: Book;
  readonly rates: RateCard;
  readonly devices: DeviceProfiles;
  readonly payers: ReadonlyMap<string, Payer>;
};

/**
 * Reads a book's own records.
 * @param folder the book's folder
 * @throws Problem when there is no book or a record in it is wrong
 */
export function openBook(folder: string): OpenBook {
  const file = (name: string) => path.join(folder, name);
  if (!existsSync(file('book.json'))) {
    throw new Problem(
      'There is no book here.',
      folder,
      'Run `keyout setup` to begin one, or `keyout demo` to see a sample; `--book DIR` names another folder.',
    );
  }
  const payers = new Map<string, Payer>();
  const names = existsSync(file('payers'))
    ? readdirSync(file('payers'))
        .filter((name) => name.endsWith('.json'))
        .sort()
    : [];
  for (const name of names) {
    const place = path.join(folder, 'payers', name);
    const record = readRecord(payer, readJson(place), place);
    if (`${record.id}.json` !== name)
      throw new Problem(`The payer's id is "${record.id}".`, `${place}, id`, 'Give the file and the id the same name.');
    payers.set(record.id, record);
  }
  return {
    folder,
    book: readRecord(book, readJson(file('book.json')), file('book.json')),
    rates: readRecord(rateCard, readJson(file('rates.json')), file('rates.json')),
    devices: readRecord(deviceProfiles, readJson(file('devices.json')), file('devices.json')),
    payers,
  };
}
