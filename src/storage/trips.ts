import { existsSync, readdirSync } from 'node:fs';
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

/** The trips of a span of days, both included, by day. */
export function listTrips(open: OpenBook, span: { readonly from: string; readonly to: string }): readonly Trip[] {
  const folder = path.join(open.folder, 'trips');
  const names = existsSync(folder) ? readdirSync(folder) : [];
  return names
    .flatMap((name) => /^(\d{4}-\d{2}-\d{2})\.json$/.exec(name)?.[1] ?? [])
    .filter((day) => day >= span.from && day <= span.to)
    .sort()
    .flatMap((day) => readTrip(open, day) ?? []);
}
