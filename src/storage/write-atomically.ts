import { closeSync, fsyncSync, mkdirSync, openSync, renameSync, rmSync, writeSync } from 'node:fs';
import path from 'node:path';
import { fileProblem } from './file-problem.ts';

/** Flushes a folder's own entries to the disk, where the system allows it. */
export function flushFolder(folder: string): void {
  const handle = openSync(folder, 'r');
  try {
    fsyncSync(handle);
  } finally {
    closeSync(handle);
  }
}

/** Writes a file and flushes it, without any care for a reader in between. */
export function writeFlushed(file: string, content: string | Uint8Array): void {
  const handle = openSync(file, 'w');
  try {
    const bytes = typeof content === 'string' ? Buffer.from(content, 'utf8') : content;
    let done = 0;
    while (done < bytes.length) done += writeSync(handle, bytes, done);
    fsyncSync(handle);
  } finally {
    closeSync(handle);
  }
}

/**
 * Writes a file whole or not at all: temporary file, flush, rename, flush of the folder.
 * @param file the path to write
 * @param content text or bytes
 * @throws Problem when the folder cannot be written
 */
export function writeAtomically(file: string, content: string | Uint8Array): void {
  const temporary = `${file}.${process.pid}.temporary`;
  try {
    mkdirSync(path.dirname(file), { recursive: true });
    writeFlushed(temporary, content);
    renameSync(temporary, file);
    flushFolder(path.dirname(file));
  } catch (error) {
    try {
      rmSync(temporary, { force: true });
    } catch {
      // the folder itself may be unwritable; the first error is the one to tell
    }
    throw fileProblem(error, file);
  }
}
