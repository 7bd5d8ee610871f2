import type { Command, CommandEntry } from './command.ts';
import { commandList } from './command-list.ts';

/** What happens without a command's name. */
export const startEntry: CommandEntry = {
  name: '',
  words: '',
  summary: 'what now? an interactive start',
  examples: ['keyout', 'keyout --book ~/keyout'],
  load: async (): Promise<Command> => (await import('./start.ts')).start,
};

/** Every command in the order of the help text. */
export const everyCommand: readonly CommandEntry[] = [
  ...commandList,
  {
    name: 'completion',
    words: 'bash|zsh|fish',
    summary: 'what your shell needs to complete commands and options',
    examples: [
      'keyout completion bash >> ~/.bashrc',
      'keyout completion fish > ~/.config/fish/completions/keyout.fish',
    ],
    load: async () => (await import('./completion.ts')).completion,
  },
];
