import { existsSync } from 'node:fs';
import path from 'node:path';
import { readRecord } from '../records/read-record.ts';
import { type Trip, trip } from '../records/trip.ts';
import type { OpenBook } from './open-book.ts';
import { readJson } from './read-json.ts';
import { writeAtomically } from './write-atomically.ts';

/** The trip of a day, or null when none is recorded. */
export function readTrip(open: OpenBook, day: string): Trip | null {
  const file = path.join(open.folder, 'trips', `${day}.json`);
  return existsSync(file) ? readRecord(trip, readJson(file), file) : null;
}

/** Writes a day's trip, whole or not at all. */
export function writeTrip(open: OpenBook, record: Trip): void {
  const file = path.join(open.folder, 'trips', `${record.day}.json`);
  writeAtomically(file, `${JSON.stringify(readRecord(trip, record, file), null, 2)}\n`);
}
