import { existsSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { fileProblem } from './file-problem.ts';
import type { OpenBook } from './open-book.ts';

/**
 * The document templates: the book's own copy where it has one, else the program's.
 * @param open the open book
 */
export function readTemplates(open: OpenBook) {
  const place = (name: string): string => {
    const own = path.join(open.folder, 'templates', `${name}.hbs`);
    return existsSync(own) ? own : fileURLToPath(new URL(`../../templates/${name}.hbs`, import.meta.url));
  };
  const text = (name: string): string => {
    try {
      return readFileSync(place(name), 'utf8');
    } catch (error) {
      throw fileProblem(error, place(name));
    }
  };
  return { text, path: place, partials: {} as Readonly<Record<string, string>> };
}
