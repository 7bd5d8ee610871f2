import { Problem } from '../problem.ts';

const meanings: Readonly<Record<string, readonly [string, string]>> = {
  EACCES: ['The file may not be read or written.', 'Change the permissions of the file or its folder.'],
  EPERM: ['The file may not be read or written.', 'Change the permissions of the file or its folder.'],
  EROFS: ['The folder is read-only.', 'Move the book to a folder that can be written.'],
  ENOSPC: ['The disk is full.', 'Make room and run the command again; nothing was changed.'],
  ENOENT: ['The file does not exist.', 'Check the path, or put the file there.'],
  ENOTDIR: ['A part of the path is a file, not a folder.', 'Check the path.'],
  EISDIR: ['A folder stands where a file is expected.', 'Move the folder away.'],
};

/**
 * A file error as a Problem; anything else is given back as it is.
 * @param error what was thrown
 * @param file the file that was meant
 */
export function fileProblem(error: unknown, file: string): unknown {
  const code = (error as NodeJS.ErrnoException | null)?.code;
  const meaning = code === undefined ? undefined : meanings[code];
  return meaning === undefined ? error : new Problem(meaning[0], file, meaning[1]);
}
