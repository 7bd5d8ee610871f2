import path from 'node:path';
import { type PrintedPreview, printPreview } from '../operations/print-preview.ts';
import { Problem } from '../problem.ts';
import { listJobs } from '../storage/jobs.ts';
import { type OpenBook, openBook } from '../storage/open-book.ts';
import { copyTemplate, readTemplates } from '../storage/templates.ts';
import { watchTemplates } from '../storage/watch-templates.ts';
import type { Command, World } from './command.ts';

const kinds = ['handover', 'invoice'] as const;
type Kind = (typeof kinds)[number];

/** `keyout preview [handover|invoice] [JOB]`: prints a job from the templates as they are, anew on every save. */
export const preview: Command = {
  options: {
    once: { type: 'boolean', help: 'print once and end, do not watch' },
    copy: { type: 'boolean', help: 'first copy the program’s template into the book, unless the book has its own' },
  },
  run: async (call, world) => {
    const book = openBook(world.bookFolder);
    const { kind, job } = wanted(call.words, book);
    if (call.options.copy === true && copyTemplate(book, kind))
      world.tell(`Your copy to edit: ${readTemplates(book).path(kind)}`);
    if (call.options.once === true) {
      const printed = await printPreview(book, kind, job, world.today(book.book.timeZone));
      world.say(world.json ? JSON.stringify(printed, null, 2) : line(printed));
      return 0;
    }
    await watchAndPrint(book, kind, job, world);
    return 0;
  },
};

function wanted(words: readonly string[], book: OpenBook): { readonly kind: Kind; readonly job: string } {
  const [first, ...rest] = words;
  const named = kinds.find((kind) => kind === first);
  const others = named === undefined ? words : rest;
  if (others.length > 1)
    throw new Problem(
      `"${others.join(' ')}" is not one job.`,
      'keyout preview',
      'Name handover or invoice, then at most one job.',
      2,
    );
  const job = others[0] ?? listJobs(book, {}).at(-1)?.id;
  if (job === undefined)
    throw new Problem('The book has no job to print.', book.folder, 'Record one with `keyout fit`.', 3);
  return { kind: named ?? 'handover', job };
}

const line = ({ file, pages }: PrintedPreview) => `${file}  ${pages} page${pages === 1 ? '' : 's'}`;

async function watchAndPrint(book: OpenBook, kind: Kind, job: string, world: World): Promise<void> {
  const template = readTemplates(book).path(kind);
  const isOwn = path.relative(book.folder, template) === path.join('templates', `${kind}.hbs`);
  world.tell(`Watching ${template}; Ctrl-C ends it.`);
  if (!isOwn) world.tell('This is the program’s own template: --copy puts a copy into the book for you to edit.');
  await new Promise<void>((stop, fail) => {
    let running = Promise.resolve();
    const printAgain = () => {
      running = running.then(() => printOrTell(book, kind, job, world)).catch(fail);
    };
    const end = watchTemplates(book, [kind], printAgain);
    for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const)
      process.once(signal, () => {
        end();
        void running.then(stop);
      });
    printAgain();
  });
}

async function printOrTell(book: OpenBook, kind: Kind, job: string, world: World): Promise<void> {
  try {
    world.say(line(await printPreview(book, kind, job, world.today(book.book.timeZone))));
  } catch (error) {
    // a mistake is the very thing that is looked for: it is told, and the watch goes on
    if (!(error instanceof Problem)) throw error;
    world.tell(`${error.what}\n  where: ${error.where}\n  to do: ${error.whatToDo}`);
  }
}
