import { existsSync, readdirSync, rmSync } from 'node:fs';
import path from 'node:path';
import type { OpenBook } from './open-book.ts';
import { isAlive } from './with-lock.ts';

/**
 * Removes what killed processes left half-written; done while no other process issues.
 * @param open the open book, held against other writers
 */
export function sweepTemporary(open: OpenBook): void {
  rmSync(path.join(open.folder, 'issued', 'unfinished'), { recursive: true, force: true });
  const folders = ['', 'payers', 'trips', 'out', path.join('issued', 'numbers'), ...yearFolders(open, 'jobs')];
  for (const folder of [...folders, ...yearFolders(open, 'out')]) {
    const place = path.join(open.folder, folder);
    if (!existsSync(place)) continue;
    for (const name of readdirSync(place)) {
      const owner = /\.(\d+)\.temporary$/.exec(name)?.[1];
      // a file of a running process is still being written
      if (owner !== undefined && !isAlive(Number(owner)))
        rmSync(path.join(place, name), { recursive: true, force: true });
    }
  }
}

function yearFolders(open: OpenBook, room: string): readonly string[] {
  const folder = path.join(open.folder, room);
  if (!existsSync(folder)) return [];
  return readdirSync(folder, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map((entry) => path.join(room, entry.name));
}
