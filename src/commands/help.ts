import type { Command, CommandOption } from './command.ts';

/**
 * The general help text.
 * @param commands every command with its words and summary
 */
export function generalHelp(
  commands: readonly { readonly name: string; readonly words: string; readonly summary: string }[],
): string {
  const rows = commands.map(
    (command) => `  ${`keyout ${command.name} ${command.words}`.trimEnd().padEnd(26)} ${command.summary}`,
  );
  return [
    'keyout: the paper side of fitting electronic devices into vehicles.',
    '',
    `  ${'keyout'.padEnd(26)} what now? an interactive start`,
    ...rows,
    '',
    'Every command takes --book DIR, --json, --no-input and --help.',
    'Exit codes: 0 done; 1 the answer is no; 2 the call was wrong; 3 the input was wrong; 130 interrupted.',
  ].join('\n');
}

/**
 * The help text of one command.
 * @param command the command
 * @param options its own options and those that all commands share
 */
export function commandHelp(command: Command, options: Readonly<Record<string, CommandOption>>): string {
  const rows = Object.entries(options).map(([name, option]) => {
    const left = `--${name}${option.takes === undefined ? '' : ` ${option.takes}`}`;
    return `  ${left.padEnd(20)} ${option.help}`;
  });
  return [`keyout ${command.name} ${command.words}`.trimEnd(), '', `  ${command.summary}`, '', ...rows].join('\n');
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
