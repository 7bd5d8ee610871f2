import { recalledJobs } from '../operations/recalled-jobs.ts';
import { openBook } from '../storage/open-book.ts';
import type { Command } from './command.ts';

/** `keyout recall [WORDS]`: what earlier jobs on such a vehicle found, as a hint to prove, never as a fact. */
export const recall: Command = {
  options: {},
  run: async (call, world) => {
    const found = recalledJobs(openBook(world.bookFolder), call.words, null);
    if (world.json) {
      world.say(JSON.stringify(found, null, 2));
      return 0;
    }
    const blocks = found.map((each) =>
      [
        `${each.job}  ${each.vehicle}`,
        ...each.opened.map((panel) => `  opened      ${panel}`),
        ...each.wires.map(
          (wire) => `  ${wire.role.padEnd(11)} ${wire.where}${wire.joined === null ? '' : `; ${wire.joined}`}`,
        ),
        ...(each.placed === null ? [] : [`  device      ${each.placed}`]),
      ].join('\n'),
    );
    world.say(
      blocks.length === 0
        ? 'No earlier job matches these words.'
        : ['A hint to prove again with the meter, never a fact.', ...blocks].join('\n\n'),
    );
    return 0;
  },
};
