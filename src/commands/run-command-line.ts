import { parseArgs } from 'node:util';
import { Problem } from '../problem.ts';
import type { Call, CommandEntry, CommandOption, World } from './command.ts';
import { everyCommand, startEntry } from './every-command.ts';
import { commandHelp, generalHelp, nearestName } from './help.ts';
import { sharedOptions } from './shared-options.ts';
import { wrapLines } from './wrap-lines.ts';

/**
 * Runs one command line and returns the exit code; a Problem is printed in three parts, never as a stack trace.
 * @param words the arguments after the program's name
 */
export async function runCommandLine(words: readonly string[]): Promise<number> {
  const debug = words.includes('--debug');
  try {
    const index = commandPlace(words);
    if (words.includes('--version')) return say(await version());
    if (index < 0 && (words.includes('--help') || words.includes('-h')))
      return say(generalHelp([startEntry, ...everyCommand]));
    return await runNamed(words[index], index < 0 ? words : words.toSpliced(index, 1));
  } catch (error) {
    return report(error, debug);
  }
}

/** Where the command's name stands: the first word that is neither an option nor the value of a shared one; -1 for none. */
function commandPlace(words: readonly string[]): number {
  return words.findIndex((word, index) => {
    const before = words[index - 1];
    const isValue = before?.startsWith('--') === true && sharedOptions[before.slice(2)]?.type === 'string';
    return !word.startsWith('-') && !isValue;
  });
}

async function runNamed(name: string | undefined, rest: readonly string[]): Promise<number> {
  const entry = name === undefined ? startEntry : entryOf(name);
  const command = await entry.load();
  const call = parseCall(entry, { ...command.options, ...sharedOptions }, rest);
  if (call.options.help === true) return say(commandHelp(entry, command.options));
  return command.run(call, await worldOf(call));
}

function entryOf(name: string): CommandEntry {
  const entry = everyCommand.find((command) => command.name === name);
  if (entry !== undefined) return entry;
  const near = nearestName(
    name,
    everyCommand.map((command) => command.name),
  );
  throw new Problem(
    `There is no command "${name}".`,
    `keyout ${name}`,
    near === null ? '`keyout --help` lists the commands.' : `Did you mean \`keyout ${near}\`?`,
    2,
  );
}

function parseCall(
  entry: CommandEntry,
  options: Readonly<Record<string, CommandOption>>,
  words: readonly string[],
): Call {
  const shape = Object.fromEntries(
    Object.entries(options).map(([name, option]) => [
      name,
      {
        type: option.type,
        multiple: option.multiple ?? false,
        ...(option.short === undefined ? {} : { short: option.short }),
      },
    ]),
  );
  try {
    const { values, positionals } = parseArgs({ args: [...words], options: shape, allowPositionals: true });
    return { words: positionals, options: values as Call['options'] };
  } catch (error) {
    const message = error instanceof Error ? (error.message.split('. ')[0] ?? '') : String(error);
    const typed = /^Unknown option '--?([^']+)'/.exec(message)?.[1];
    const near = typed === undefined ? null : nearestName(typed, Object.keys(options));
    const named = `keyout ${entry.name}`.trimEnd();
    throw new Problem(
      `The call was not understood: ${message}.`,
      named,
      near === null ? `\`${named} --help\` lists its options.` : `Did you mean \`--${near}\`?`,
      2,
    );
  }
}

async function worldOf(call: Call): Promise<World> {
  const { findBook } = await import('../storage/find-book.ts');
  const { isCalendarDate } = await import('../quantities/calendar-date.ts');
  const given = call.options.today;
  if (typeof given === 'string' && !isCalendarDate(given)) {
    throw new Problem(`"${given}" is not a date that exists.`, '--today', 'Write it like 2026-11-24.', 2);
  }
  const option = call.options.book;
  return {
    say: (text) => process.stdout.write(`${text}\n`),
    tell: (text) => {
      const columns = process.stderr.isTTY ? (process.stderr.columns ?? 80) : Number.POSITIVE_INFINITY;
      process.stderr.write(`${wrapLines(text, columns)}\n`);
    },
    today: (timeZone) => (typeof given === 'string' ? given : localDay(timeZone)),
    now: () => new Date().toISOString().replace(/\.\d+Z$/, 'Z'),
    bookFolder: findBook({
      option: typeof option === 'string' ? option : null,
      environment: process.env,
      currentFolder: process.cwd(),
    }),
    van: typeof call.options.van === 'string' ? call.options.van : process.env.KEYOUT_VAN || null,
    json: call.options.json === true,
    mayAsk: call.options['no-input'] !== true && process.stdin.isTTY === true && process.stdout.isTTY === true,
    plain: call.options.plain === true || process.env.TERM === 'dumb',
    columns: process.stderr.columns ?? 80,
    random: Math.random,
  };
}

function localDay(timeZone: string): string {
  return new Intl.DateTimeFormat('en-CA', { timeZone, year: 'numeric', month: '2-digit', day: '2-digit' }).format(
    new Date(),
  );
}

async function version(): Promise<string> {
  const { readFile } = await import('node:fs/promises');
  const text = await readFile(new URL('../../package.json', import.meta.url), 'utf8');
  return (JSON.parse(text) as { version: string }).version;
}

function say(text: string): number {
  process.stdout.write(`${text}\n`);
  return 0;
}

function report(error: unknown, debug: boolean): number {
  if (error instanceof Problem) {
    process.stderr.write(`${error.what}\n  where: ${error.where}\n  to do: ${error.whatToDo}\n`);
    return error.exitCode;
  }
  if (error instanceof Error && error.name === 'ExitPromptError') {
    process.stderr.write('Stopped. What was answered so far is saved.\n');
    return 130;
  }
  if (error instanceof Error && error.name === 'ZodError' && 'issues' in error) {
    // an answer that a prompt let pass and the record does not hold
    const issues = error.issues as readonly { readonly path: readonly PropertyKey[]; readonly message: string }[];
    const said = issues.map((issue) => `${issue.path.map(String).join('.')} ${issue.message}`).join('; ');
    process.stderr.write(`An answer does not fit: ${said}.\n  to do: run the command again and answer it otherwise.\n`);
    return 3;
  }
  const message = error instanceof Error ? error.message : String(error);
  process.stderr.write(
    `The program itself failed: ${message}\n  to do: run it again with --debug and send the text to whoever looks after it; the book is unchanged.\n`,
  );
  if (debug && error instanceof Error) process.stderr.write(`${error.stack}\n`);
  return 70;
}
