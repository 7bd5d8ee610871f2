import type { CommandOption } from './command.ts';
import { sharedOptions } from './shared-options.ts';

/** Shells for which a completion is written. */
export const shells = ['bash', 'zsh', 'fish'] as const;

type Completed = {
  readonly name: string;
  readonly summary: string;
  readonly options: Readonly<Record<string, CommandOption>>;
};

const optionsOf = (options: Completed['options']) => Object.entries({ ...options, ...sharedOptions });
const flags = (options: Completed['options']) => optionsOf(options).map(([name]) => `--${name}`);
/** A text between single quotes, as every shell of the three reads it. */
const quoted = (text: string) => `'${text.replaceAll("'", '’')}'`;

/**
 * A script that completes the names of commands and their options in a shell.
 * @param shell the shell
 * @param commands every command with its own options
 */
export function shellCompletion(shell: (typeof shells)[number], commands: readonly Completed[]): string {
  if (shell === 'fish') return fish(commands);
  const names = commands.map((command) => command.name).join(' ');
  const cases = commands.map(({ name, options }) => `    ${name}) words='${flags(options).join(' ')}' ;;`);
  const choose = [`  local words='${names} ${flags({}).join(' ')}'`, '  case "$command" in', ...cases, '  esac'];
  if (shell === 'bash')
    return [
      '_keyout() {',
      `  local command="\${COMP_WORDS[1]}"`,
      '  [ "$COMP_CWORD" -le 1 ] && command=""',
      ...choose,
      `  COMPREPLY=($(compgen -W "$words" -- "\${COMP_WORDS[COMP_CWORD]}"))`,
      '}',
      'complete -o default -F _keyout keyout',
    ].join('\n');
  return [
    '#compdef keyout',
    '_keyout() {',
    `  local command="\${words[2]}"`,
    '  (( CURRENT <= 2 )) && command=""',
    ...choose.map((line) => line.replace('local words=', 'local known=').replace(") words='", ") known='")),
    `  compadd -- \${=known}`,
    '  _files',
    '}',
    'compdef _keyout keyout',
  ].join('\n');
}

function fish(commands: readonly Completed[]): string {
  const line = (condition: string, [name, option]: readonly [string, CommandOption]) =>
    `complete -c keyout${condition} -l ${name}${option.takes === undefined ? '' : ' -r'} -d ${quoted(option.help)}`;
  return [
    ...commands.map(
      ({ name, summary }) => `complete -c keyout -n __fish_use_subcommand -a ${name} -d ${quoted(summary)}`,
    ),
    ...Object.entries(sharedOptions).map((each) => line('', each)),
    ...commands.flatMap(({ name, options }) =>
      Object.entries(options).map((each) => line(` -n '__fish_seen_subcommand_from ${name}'`, each)),
    ),
  ].join('\n');
}
