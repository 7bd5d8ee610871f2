import { existsSync, rmSync } from 'node:fs';
import path from 'node:path';
import { book } from '../records/book.ts';
import { deviceProfiles } from '../records/device-profile.ts';
import { type Payer, payer } from '../records/payer.ts';
import { rateCard } from '../records/rate-card.ts';
import { readRecord } from '../records/read-record.ts';
import { readJson } from './read-json.ts';
import { writeAtomically } from './write-atomically.ts';

const records = { 'book.json': book, 'rates.json': rateCard, 'devices.json': deviceProfiles } as const;

/**
 * Writes one of the book's own records, whole or not at all, after its shape was checked.
 * @param folder the book's folder
 * @param name which file
 * @param value the record
 * @throws Problem when the record is wrong or the folder cannot be written
 */
export function writeBookRecord(folder: string, name: keyof typeof records, value: unknown): void {
  const file = path.join(folder, name);
  writeAtomically(file, `${JSON.stringify(readRecord(records[name], value, file), null, 2)}\n`);
}

/**
 * Writes one payer.
 * @param folder the book's folder
 * @param value the payer
 */
export function writePayer(folder: string, value: Payer): void {
  const file = path.join(folder, 'payers', `${value.id}.json`);
  writeAtomically(file, `${JSON.stringify(readRecord(payer, value, file), null, 2)}\n`);
}

const draftFile = (folder: string) => path.join(folder, 'setup-unfinished.json');

/** Answers of a set-up that was stopped half-way; none when there is no such file. */
export function readSetupAnswers(folder: string): readonly string[] {
  if (!existsSync(draftFile(folder))) return [];
  const value = readJson(draftFile(folder));
  return Array.isArray(value) ? value.filter((each) => typeof each === 'string') : [];
}

/** Keeps the answers of a set-up so far; null when it is finished. */
export function keepSetupAnswers(folder: string, answers: readonly string[] | null): void {
  if (answers === null) rmSync(draftFile(folder), { force: true });
  else writeAtomically(draftFile(folder), `${JSON.stringify(answers, null, 2)}\n`);
}
