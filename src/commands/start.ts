import { existsSync } from 'node:fs';
import path from 'node:path';
import { Problem } from '../problem.ts';
import { askFor } from '../prompts/ask-for.ts';
import type { Call, Command, World } from './command.ts';
import { commandList } from './command-list.ts';

type Entry = { readonly name: string; readonly command: string; readonly asks?: string };

const work: readonly Entry[] = [
  { name: 'A new job, or go on with one', command: 'fit' },
  { name: 'Check today’s jobs', command: 'check' },
  { name: 'The customer signs', command: 'sign', asks: 'Which job?' },
  { name: 'Finish the day', command: 'day' },
  { name: 'Money', command: 'money' },
  { name: 'Recall where the wires were', command: 'recall', asks: 'Maker, model, plate or unit number' },
  { name: 'Verify the book', command: 'verify' },
  { name: 'Change the business, rates, devices or payers', command: 'setup' },
];

const money: readonly Entry[] = [
  { name: 'Issue invoices', command: 'bill' },
  { name: 'A payment came in', command: 'paid', asks: 'Which invoice?' },
  { name: 'Who owes what', command: 'owed' },
  { name: 'Credit an invoice', command: 'credit', asks: 'Which invoice?' },
  { name: 'Files for the bookkeeper', command: 'export' },
];

/** Plain `keyout`: what now? Asks, then runs the command chosen; without a book it begins one. */
export const start: Command = {
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
    if (!existsSync(path.join(world.bookFolder, 'book.json'))) {
      world.tell(`There is no book in ${world.bookFolder} yet.`);
      if (!(await askFor(world.plain).confirm('Begin one now?', true))) return 1;
      return runEntry('setup', call, world);
    }
    const chosen = await choose('What now?', work, world);
    return chosen.command === 'money'
      ? runChosen(await choose('Money', money, world), call, world)
      : runChosen(chosen, call, world);
  },
};

// a command that is not there yet is not offered
async function choose(message: string, entries: readonly Entry[], world: World): Promise<Entry> {
  const offered = entries.filter(
    (entry) => entry.command === 'money' || commandList.some((command) => command.name === entry.command),
  );
  const name = await askFor(world.plain).choose(
    message,
    offered.map((entry) => ({ value: entry.command, name: entry.name })),
    offered[0]?.command ?? '',
  );
  return offered.find((entry) => entry.command === name) ?? { name, command: name };
}

async function runChosen(entry: Entry, call: Call, world: World): Promise<0 | 1> {
  const words =
    entry.asks === undefined ? [] : (await askFor(world.plain).text(entry.asks, '')).split(/\s+/).filter(Boolean);
  return runEntry(entry.command, { ...call, words }, world);
}

async function runEntry(name: string, call: Call, world: World): Promise<0 | 1> {
  const entry = commandList.find((command) => command.name === name);
  return entry === undefined ? 1 : (await entry.load()).run(call, world);
}
