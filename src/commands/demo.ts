import { cp, readdir } from 'node:fs/promises';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { finishDay } from '../operations/finish-day.ts';
import { Problem } from '../problem.ts';
import { openBook } from '../storage/open-book.ts';
import type { Command } from './command.ts';
import { momentOf } from './moment-of.ts';
import { writeDay } from './write-day.ts';

const sampleDay = '2026-11-24';

/** `keyout demo [DIR]`: a copy of the sample book, and its sample day finished. */
export const demo: Command = {
  options: {},
  run: async (call, world) => {
    const folder = path.resolve(call.words[0] ?? 'demo-book');
    const present = await readdir(folder).catch(() => [] as string[]);
    if (present.length > 0 && !present.includes('book.json')) {
      throw new Problem(
        'The folder holds other files.',
        folder,
        'Name an empty folder, or one made by an earlier demo.',
        2,
      );
    }
    if (present.length === 0) {
      const samples = fileURLToPath(new URL('../../sample-jobs', import.meta.url));
      await cp(samples, folder, { recursive: true, filter: (source) => path.basename(source) !== 'README.md' });
    }
    const book = await openBook(folder);
    const { finished, lacking } = await finishDay(book, sampleDay, momentOf(book, world));
    for (const sentence of lacking) world.tell(sentence);
    if (world.json) {
      world.say(JSON.stringify(finished, null, 2));
      return 0;
    }
    world.say(
      [
        `The sample book is in ${folder}`,
        writeDay(finished, book.book.locale),
        'Look at a sheet and an invoice, then: npx keyout check 2026-11-24-7QTR --book demo-book',
      ].join('\n\n'),
    );
    return 0;
  },
};
