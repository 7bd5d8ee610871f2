import { existsSync, watch } from 'node:fs';
import path from 'node:path';
import { fileProblem } from './file-problem.ts';
import type { OpenBook } from './open-book.ts';
import { readTemplates } from './templates.ts';

/** Editors write a file in several steps: what comes within this time is one save. */
const quietMilliseconds = 120;

/**
 * Tells of every save of a template, the book's own or the program's, once things are quiet again.
 * @param open the open book
 * @param names the templates that matter ("handover")
 * @param saved what to do
 * @returns what ends the watch
 * @throws Problem when a folder cannot be watched
 */
export function watchTemplates(open: OpenBook, names: readonly string[], saved: () => void): () => void {
  const { path: place } = readTemplates(open);
  // folders, not files: editors put a new file in the place of the old one, and the book's own copy may come later
  const folders = new Set([path.join(open.folder, 'templates'), ...names.map((name) => path.dirname(place(name)))]);
  let timer: NodeJS.Timeout | undefined;
  const watchers = [...folders].filter(existsSync).map((folder) => {
    try {
      return watch(folder, (_, file) => {
        if (file !== null && !file.endsWith('.hbs')) return;
        clearTimeout(timer);
        timer = setTimeout(saved, quietMilliseconds);
      });
    } catch (error) {
      throw fileProblem(error, folder);
    }
  });
  return () => {
    clearTimeout(timer);
    for (const watcher of watchers) watcher.close();
  };
}
