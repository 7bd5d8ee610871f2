import { Problem } from '../problem.ts';
import type { Command } from './command.ts';
import { commandList } from './command-list.ts';
import { shellCompletion, shells } from './shell-completion.ts';

/** What a shell needs to complete commands and options. */
export const completion: Command = {
  options: {},
  run: async (call, world) => {
    const shell = shells.find((each) => each === call.words[0]);
    if (shell === undefined)
      throw new Problem(
        call.words[0] === undefined ? 'No shell is named.' : `There is no completion for "${call.words[0]}".`,
        'keyout completion',
        `Name one of ${shells.join(', ')}.`,
        2,
      );
    const commands = await Promise.all(
      commandList.map(async ({ name, summary, load }) => ({ name, summary, options: (await load()).options })),
    );
    world.say(shellCompletion(shell, commands));
    return 0;
  },
};
