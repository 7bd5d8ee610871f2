import { finishDay, writeDay } from '../operations/finish-day.ts';
import { askForTrip } from '../operations/trip-of-job.ts';
import { Problem } from '../problem.ts';
import { isCalendarDate } from '../quantities/calendar-date.ts';
import { openBook } from '../storage/open-book.ts';
import type { Command } from './command.ts';

/** `keyout day [DATE]`: check, hand over, bill, and list what is still open; twice changes nothing. */
export const day: Command = {
  name: 'day',
  words: '[DATE]',
  summary: 'finish the day: check, hand over, bill, and list what is still open',
  options: { day: { type: 'string', takes: 'DATE', help: 'the day (default: today)' } },
  run: async (call, world) => {
    const book = await openBook(world.bookFolder);
    const given = call.words[0] ?? (typeof call.options.day === 'string' ? call.options.day : undefined);
    if (given !== undefined && !isCalendarDate(given))
      throw new Problem(`"${given}" is not a date that exists.`, 'keyout day', 'Write it like 2026-11-24.', 2);
    const chosen = given ?? world.today(book.book.timeZone);
    await askForTrip(book, chosen, world);
    const finished = await finishDay(book, chosen, world);
    world.say(world.json ? JSON.stringify(finished, null, 2) : writeDay(finished, book.book.locale));
    return finished.jobs.some((job) => job.state === 'blocked') ? 1 : 0;
  },
};
