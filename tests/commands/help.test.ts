import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { everyCommand, startEntry } from '../../src/commands/every-command.ts';
import { commandHelp, generalHelp } from '../../src/commands/help.ts';
import { sharedOptions } from '../../src/commands/shared-options.ts';
import { shellCompletion } from '../../src/commands/shell-completion.ts';

const readme = readFileSync(new URL('../../README.md', import.meta.url), 'utf8');
const entries = [startEntry, ...everyCommand];

test('the README lists every command in the words of the help', () => {
  const rows = readme.split('\n').filter((line) => line.startsWith('| `keyout'));
  const wanted = entries.map(({ name, words, summary }) => {
    const call = ['keyout', name, words].filter((word) => word !== '').join(' ');
    return `| \`${call.replaceAll('|', '\\|')}\` | ${summary} |`;
  });
  expect(rows).toEqual(wanted);
});

describe('help', () => {
  test('names all commands, the shared options and the environment, in 80 columns', () => {
    const help = generalHelp(entries);
    for (const { name } of everyCommand) expect(help).toContain(`keyout ${name}`);
    for (const name of [...Object.keys(sharedOptions).map((each) => `--${each}`), 'KEYOUT_BOOK', 'KEYOUT_VAN'])
      expect(help).toContain(name);
    expect(help.split('\n').filter((line) => line.length > 80)).toEqual([]);
  });

  test.each(everyCommand.map((entry) => [entry.name, entry] as const))(
    'of %s: its own options before the shared ones, two examples, in 80 columns',
    async (name, entry) => {
      const { options } = await entry.load();
      const help = commandHelp(entry, options);
      const at = (option: string) => help.split('\n').findIndex((line) => line.startsWith(`  --${option}`));
      for (const own of Object.keys(options)) expect(at(own)).toBeLessThan(at('book'));
      for (const shared of Object.keys(sharedOptions)) expect(at(shared)).toBeGreaterThan(0);
      expect(help.split('\n').filter((line) => line.length > 80)).toEqual([]);
      for (const example of entry.examples) {
        expect(example).toMatch(new RegExp(`^keyout ${name}`));
        for (const [, option = ''] of example.matchAll(/--([a-z-]+)/g))
          expect(Object.keys({ ...options, ...sharedOptions })).toContain(option);
      }
    },
  );
});

describe('completion', () => {
  const commands = Promise.all(
    everyCommand.map(async ({ name, summary, load }) => ({ name, summary, options: (await load()).options })),
  );
  const bash = async (line: readonly string[]) => {
    const script = [
      shellCompletion('bash', await commands),
      `COMP_WORDS=(${line.map((word) => `'${word}'`).join(' ')}); COMP_CWORD=${line.length - 1}; _keyout`,
      `printf '%s\\n' "\${COMPREPLY[@]}"`,
    ].join('\n');
    const { stdout, stderr } = spawnSync('bash', ['--norc', '-c', script], { encoding: 'utf8' });
    expect(stderr).toBe('');
    return stdout.trim().split('\n');
  };

  test('in bash offers the commands that begin so', async () => {
    expect(await bash(['keyout', 'ha'])).toEqual(['handover']);
  });

  test('in bash offers the options of the command typed', async () => {
    expect(await bash(['keyout', 'bill', '--d'])).toEqual(['--day', '--draft', '--debug']);
  });

  test('in zsh and fish names every command and option', async () => {
    for (const shell of ['zsh', 'fish'] as const) {
      const script = shellCompletion(shell, await commands);
      for (const { name, options } of await commands) {
        expect(script).toContain(name);
        for (const option of Object.keys(options)) expect(script).toContain(option);
      }
    }
  });
});
