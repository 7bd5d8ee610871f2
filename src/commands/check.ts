import { chosenJobs } from '../operations/chosen-jobs.ts';
import { examineJob } from '../operations/examine-job.ts';
import { openBook } from '../storage/open-book.ts';
import { checkData } from './check-data.ts';
import type { Command } from './command.ts';
import { writeCheck } from './write-check.ts';

/** `keyout check [JOB…]`: verdicts against readings, and every trade rule. */
export const check: Command = {
  options: { day: { type: 'string', takes: 'DATE', help: 'the jobs of this day (default: today)' } },
  run: async (call, world) => {
    const book = await openBook(world.bookFolder);
    const day = typeof call.options.day === 'string' ? call.options.day : world.today(book.book.timeZone);
    const jobs = await chosenJobs(book, call.words, day);
    const examined = [];
    for (const job of jobs) examined.push(await examineJob(book, job));
    if (world.json) world.say(JSON.stringify(examined.map(checkData), null, 2));
    else world.say(examined.length === 0 ? `There is no job on ${day}.` : examined.map(writeCheck).join('\n\n'));
    return examined.some((each) => each.open.length > 0) ? 1 : 0;
  },
};
