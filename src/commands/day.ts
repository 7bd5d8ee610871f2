import { finishDay } from '../operations/finish-day.ts';
import { Problem } from '../problem.ts';
import { isCalendarDate } from '../quantities/calendar-date.ts';
import { openBook } from '../storage/open-book.ts';
import { askForTrip } from './ask-for-trip.ts';
import type { Command } from './command.ts';
import { momentOf } from './moment-of.ts';
import { writeDay } from './write-day.ts';

/** `keyout day [DATE]`: check, hand over, bill, and list what is still open; twice changes nothing. */
export const day: Command = {
  options: { day: { type: 'string', takes: 'DATE', help: 'the day (default: today)' } },
  run: async (call, world) => {
    const book = await openBook(world.bookFolder);
    const given = call.words[0] ?? (typeof call.options.day === 'string' ? call.options.day : undefined);
    if (given !== undefined && !isCalendarDate(given))
      throw new Problem(`"${given}" is not a date that exists.`, 'keyout day', 'Write it like 2026-11-24.', 2);
    const chosen = given ?? world.today(book.book.timeZone);
    await askForTrip(book, chosen, world);
    const { finished, lacking } = await finishDay(book, chosen, momentOf(book, world));
    for (const sentence of lacking) world.tell(sentence);
    world.say(world.json ? JSON.stringify(finished, null, 2) : writeDay(finished, book.book.locale));
    return finished.jobs.some((job) => job.state === 'blocked') ? 1 : 0;
  },
};
