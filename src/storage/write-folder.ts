import { existsSync, mkdirSync, readdirSync, renameSync, rmSync } from 'node:fs';
import path from 'node:path';
import { Problem } from '../problem.ts';
import { fileProblem } from './file-problem.ts';
import { flushFolder, writeFlushed } from './write-atomically.ts';

function filesOf(folder: string): readonly string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true, encoding: 'utf8' })
    .filter((entry) => !entry.isDirectory())
    .map((entry) => path.relative(folder, path.join(entry.parentPath, entry.name)).split(path.sep).join('/'));
}

function refuseForeign(folder: string, isOurs: (file: string) => boolean): void {
  const foreign = filesOf(folder).find((file) => !isOurs(file));
  if (foreign !== undefined)
    throw new Problem(
      `The folder holds a file that this command did not write: ${foreign}.`,
      folder,
      'Name an empty folder, a new one, or one that holds an earlier export and nothing else.',
    );
}

/**
 * Writes a folder whole or not at all: everything beside it first, flushed, then one rename; an earlier one of the same kind makes way.
 * @param folder the folder to make
 * @param files content by path inside the folder
 * @param isOurs whether a file found there may be replaced
 * @throws Problem when the folder holds anything else, or cannot be written
 */
export function writeFolder(
  folder: string,
  files: ReadonlyMap<string, string>,
  isOurs: (file: string) => boolean,
): void {
  const target = path.resolve(folder);
  const temporary = `${target}.${process.pid}.temporary`;
  const former = `${target}.${process.pid}.former`;
  try {
    if (existsSync(target)) refuseForeign(target, isOurs);
    rmSync(temporary, { recursive: true, force: true });
    for (const [name, content] of files) {
      const file = path.join(temporary, name);
      mkdirSync(path.dirname(file), { recursive: true });
      writeFlushed(file, content);
    }
    if (existsSync(target)) renameSync(target, former);
    renameSync(temporary, target);
    flushFolder(path.dirname(target));
    rmSync(former, { recursive: true, force: true });
  } catch (error) {
    if (existsSync(former) && !existsSync(target)) renameSync(former, target);
    rmSync(temporary, { recursive: true, force: true });
    throw fileProblem(error, target);
  }
}
