import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import pty from '@lydell/node-pty';

export const mainFile = fileURLToPath(new URL('../../dist/main.js', import.meta.url));

/** One line of a typing script: how a prompt begins, and what is typed before Enter. */
export type Typed = { readonly begins: string; readonly text: string };

/** Reads a typing script: "prompt begins => typed", comments with "#". */
export function readScript(name: string): readonly Typed[] {
  const text = readFileSync(new URL(name, import.meta.url), 'utf8');
  return text
    .split('\n')
    .filter((line) => line.includes(' =>') && !line.startsWith('#'))
    .map((line) => {
      const [begins = '', typed = ''] = line.split(' =>');
      return { begins, text: typed.trimStart() };
    });
}

// biome-ignore lint/suspicious/noControlCharactersInRegex: a terminal's own control sequences are what is taken away
const controls = /\u001b\[[0-9;?]*[A-Za-z]|\u001b[=>]|\r/g;

/** What became of a sitting at the terminal. */
export type Sitting = {
  readonly screen: string;
  readonly exitCode: number;
  readonly signal: number;
  readonly keystrokes: number;
  readonly prompts: readonly string[];
  readonly unused: readonly Typed[];
};

/**
 * Runs a command in a pseudo-terminal and types: at each prompt the script's first unused line that it begins with, else Enter.
 * @param words the command line
 * @param script what to type
 * @param options folder; a prompt at which the program is killed or interrupted instead of answered
 */
export function typeInto(
  words: readonly string[],
  script: readonly Typed[],
  options: {
    readonly folder: string;
    readonly stopAt?: string;
    readonly stopWith?: 'kill' | 'ctrl-c';
    readonly environment?: Readonly<Record<string, string>>;
  },
): Promise<Sitting> {
  const left = [...script];
  const prompts: string[] = [];
  let keystrokes = 0;
  let screen = '';
  let since = '';
  let answered = true;
  const child = pty.spawn(process.execPath, [mainFile, ...words], {
    cols: 230,
    rows: 60,
    cwd: options.folder,
    env: { ...process.env, TERM: 'xterm', NO_COLOR: '1', ...options.environment },
  });
  return new Promise((resolve, reject) => {
    let waiting: NodeJS.Timeout;
    const late = () => {
      child.kill('SIGKILL');
      reject(new Error(`nothing more was asked; the screen ended with:\n${screen.slice(-3000)}`));
    };
    const rearm = () => {
      clearTimeout(waiting);
      waiting = setTimeout(late, 20_000);
    };
    const answer = (prompt: string) => {
      prompts.push(prompt);
      since = '';
      answered = false;
      if (options.stopAt !== undefined && prompt.startsWith(options.stopAt)) {
        if (options.stopWith === 'kill') child.kill('SIGKILL');
        else child.write('\u0003');
        return;
      }
      const place = left.findIndex((each) => prompt.startsWith(each.begins));
      const [typed] = place < 0 ? [] : left.splice(place, 1);
      keystrokes += (typed?.text.length ?? 0) + 1;
      child.write(`${typed?.text ?? ''}\r`);
    };
    rearm();
    child.onData((data) => {
      const plain = data.replace(controls, '');
      screen += plain;
      since += plain;
      if (!answered && /✔ /.test(since)) {
        answered = true;
        since = since.slice(since.lastIndexOf('✔ ') + 2);
      }
      const asked = answered ? /^\? (.+)$/m.exec(since) : null;
      if (asked?.[1] !== undefined) {
        rearm();
        const prompt = asked[1];
        // the prompt reads its keys only once it is drawn
        setTimeout(() => answer(prompt), 4);
        answered = false;
        since = '';
      }
    });
    child.onExit(({ exitCode, signal }) => {
      clearTimeout(waiting);
      resolve({ screen, exitCode, signal: signal ?? 0, keystrokes, prompts, unused: left });
    });
  });
}
