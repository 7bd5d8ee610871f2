import { copyFileSync, existsSync, mkdirSync, readFileSync } from 'node:fs';
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

/**
 * Copies the program's template into the book, to be edited there; a copy that exists is left as it is.
 * @param open the open book
 * @param name the template's name ("handover")
 * @returns whether it was copied
 */
export function copyTemplate(open: OpenBook, name: string): boolean {
  const own = path.join(open.folder, 'templates', `${name}.hbs`);
  if (existsSync(own)) return false;
  try {
    mkdirSync(path.dirname(own), { recursive: true });
    copyFileSync(readTemplates(open).path(name), own);
  } catch (error) {
    throw fileProblem(error, own);
  }
  return true;
}
