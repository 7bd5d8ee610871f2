import { existsSync } from 'node:fs';
import { homedir } from 'node:os';
import path from 'node:path';

/**
 * The folder of the book: the option, else KEYOUT_BOOK, else the book the current folder stands in, else the user's data folder.
 * @param from the option, the environment and the current folder
 */
export function findBook(from: {
  readonly option: string | null;
  readonly environment: Readonly<Record<string, string | undefined>>;
  readonly currentFolder: string;
}): string {
  if (from.option !== null) return path.resolve(from.currentFolder, from.option);
  const named = from.environment.KEYOUT_BOOK;
  if (named !== undefined && named !== '') return path.resolve(from.currentFolder, named);
  for (let folder = from.currentFolder; ; folder = path.dirname(folder)) {
    if (existsSync(path.join(folder, 'book.json'))) return folder;
    if (path.dirname(folder) === folder) break;
  }
  const data = from.environment.XDG_DATA_HOME;
  return path.join(
    data !== undefined && path.isAbsolute(data) ? data : path.join(homedir(), '.local', 'share'),
    'keyout',
  );
}
