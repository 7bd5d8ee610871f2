import { select } from '@inquirer/prompts';
import { Problem } from '../problem.ts';
import type { Command } from './command.ts';
import { commandList } from './command-list.ts';

/** Plain `keyout`: what now? Asks, then runs the command chosen. */
export const start: Command = {
  name: '',
  words: '',
  summary: 'what now?',
  options: {},
  run: async (call, world) => {
    if (!world.mayAsk) {
      throw new Problem(
        'There is no terminal to ask in.',
        'keyout',
        'Name a command (`keyout --help` lists them), or write the job as a file: `keyout schema job`.',
        2,
      );
    }
    const name = await select({
      message: 'What now?',
      choices: [
        { name: 'A new job, or go on with one', value: 'fit' },
        { name: 'Check today’s jobs', value: 'check' },
        { name: 'Finish the day', value: 'day' },
        { name: 'Recall where the wires were', value: 'recall' },
        { name: 'Verify the book', value: 'verify' },
      ],
    });
    const entry = commandList.find((command) => command.name === name);
    return entry === undefined ? 1 : (await entry.load()).run(call, world);
  },
};
