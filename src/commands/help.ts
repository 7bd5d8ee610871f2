import type { CommandEntry, CommandOption } from './command.ts';
import { environmentVariables, sharedOptions } from './shared-options.ts';

type Options = Readonly<Record<string, CommandOption>>;

const columns = 80;

/** A name with its explanation in a column at the right, no line longer than 80 columns. */
function row(left: string, right: string, indent: number): readonly string[] {
  const lines: string[] = [];
  let line = `  ${left}`;
  if (line.length >= indent) {
    lines.push(line);
    line = '';
  }
  line = line.padEnd(indent);
  for (const word of right.split(' ')) {
    if (line.trim() !== '' && line.length > indent && line.length + 1 + word.length > columns) {
      lines.push(line);
      line = ' '.repeat(indent);
    }
    line += line.length === indent ? word : ` ${word}`;
  }
  return [...lines, line];
}

const callOf = ({ name, words }: CommandEntry) => ['keyout', name, words].filter((word) => word !== '').join(' ');

const optionRows = (options: Options) =>
  Object.entries(options).flatMap(([name, { takes, short, help }]) =>
    row(`--${name}${short === undefined ? '' : `, -${short}`}${takes === undefined ? '' : ` ${takes}`}`, help, 22),
  );

const exitCodes =
  'Exit codes: 0 done; 1 the answer is no; 2 the call was wrong; 3 the input was\nwrong; 130 interrupted.';

/**
 * The general help text.
 * @param entries every command, the interactive start first
 */
export function generalHelp(entries: readonly CommandEntry[]): string {
  return [
    'keyout: the paper side of fitting electronic devices into vehicles.',
    '',
    ...entries.flatMap((entry) => row(callOf(entry), entry.summary, 29)),
    '',
    'Every command takes:',
    ...optionRows(sharedOptions),
    '',
    'From the environment:',
    ...environmentVariables.flatMap(([name, help]) => row(name, help, 22)),
    '',
    '`keyout COMMAND --help` lists a command’s own options, with examples.',
    exitCodes,
  ].join('\n');
}

/**
 * The help text of one command: its own options first, then those that all share.
 * @param entry the command
 * @param options its own options
 */
export function commandHelp(entry: CommandEntry, options: Options): string {
  const own = optionRows(options);
  return [
    callOf(entry),
    ...row('', entry.summary, 2),
    '',
    ...(own.length === 0 ? [] : ['Its options:', ...own, '']),
    'Every command takes:',
    ...optionRows(sharedOptions),
    '',
    'Examples:',
    ...entry.examples.map((example) => `  ${example}`),
  ].join('\n');
}

/**
 * The name nearest to a mistyped one, or null when none is near (more than two letters off).
 * @param typed what was typed
 * @param names what could have been meant
 */
export function nearestName(typed: string, names: readonly string[]): string | null {
  const ranked = names
    .map((name) => ({ name, off: lettersOff(typed, name) }))
    .sort((one, other) => one.off - other.off);
  const best = ranked[0];
  return best !== undefined && best.off <= 2 ? best.name : null;
}

function lettersOff(one: string, other: string): number {
  let row = Array.from({ length: other.length + 1 }, (_, index) => index);
  for (let i = 1; i <= one.length; i += 1) {
    const next = [i];
    for (let j = 1; j <= other.length; j += 1) {
      const same = one[i - 1] === other[j - 1] ? 0 : 1;
      next.push(Math.min((row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1, (row[j - 1] ?? 0) + same));
    }
    row = next;
  }
  return row[other.length] ?? 0;
}
