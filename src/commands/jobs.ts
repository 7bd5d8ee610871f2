import { type ListedJob, listedJobs } from '../operations/listed-jobs.ts';
import { Problem } from '../problem.ts';
import { isCalendarDate } from '../quantities/calendar-date.ts';
import { openBook } from '../storage/open-book.ts';
import type { Command } from './command.ts';

function spanOf(text: string | undefined): { from?: string; to?: string } {
  if (text === undefined) return {};
  const [from = '', to = from] = text.split('..');
  for (const day of [from, to].filter((each) => each !== '' || text === '' || text === '..'))
    if (!isCalendarDate(day))
      throw new Problem(
        `"${text}" is neither a day nor a span of days.`,
        'keyout jobs',
        'Write a day like 2026-11-24, or a span like 2026-11-01..2026-11-30.',
        2,
      );
  if (from !== '' && to !== '' && to < from)
    throw new Problem('The span ends before it begins.', 'keyout jobs', 'Write the earlier day first.', 2);
  return { ...(from === '' ? {} : { from }), ...(to === '' ? {} : { to }) };
}

function writeJobs(jobs: readonly ListedJob[]): string {
  if (jobs.length === 0) return 'There is no job there.';
  const rows = [
    ['job', 'state', 'invoice', 'vehicle: what is open'],
    ...jobs.map(({ job, state, invoice, vehicle, open }) => [
      job,
      state,
      invoice ?? '–',
      `${vehicle}: ${open.join(', ') || 'nothing open'}`,
    ]),
  ];
  const widths = [0, 1, 2].map((column) => Math.max(...rows.map((row) => row[column]?.length ?? 0)));
  return rows.map((row) => row.map((cell, column) => cell.padEnd(widths[column] ?? 0)).join('  ')).join('\n');
}

/** `keyout jobs [DAY|FROM..TO]`: every job with how far it has come and what is open on it. */
export const jobs: Command = {
  options: {},
  run: async (call, world) => {
    const [text, ...more] = call.words;
    if (more.length > 0)
      throw new Problem('More than one day or span is named.', 'keyout jobs', 'Name one, such as 2026-11-24.', 2);
    const span = spanOf(text);
    const book = openBook(world.bookFolder);
    const found = await listedJobs(book, span, world.today(book.book.timeZone));
    world.say(world.json ? JSON.stringify({ jobs: found }, null, 2) : writeJobs(found));
    return 0;
  },
};
