import type { Call, Command, World } from '../../src/commands/command.ts';
import { Problem } from '../../src/problem.ts';

/**
 * Runs a command of the sources in this process, on the sample day at 16:05 UTC, and does something once a page's
 * address was told.
 */
export async function runCommand(
  command: Command,
  folder: string,
  words: readonly string[],
  options: Call['options'] = {},
  act: (url: string) => unknown = () => {},
) {
  let [out, err] = ['', ''];
  let acted: Promise<unknown> = Promise.resolve();
  const world: World = {
    say: (text) => {
      out += `${text}\n`;
    },
    tell: (text) => {
      err += `${text}\n`;
      const url = /http:\/\/\S+/.exec(text)?.[0];
      if (url !== undefined) acted = Promise.resolve(act(url));
    },
    today: () => '2026-11-24',
    now: () => '2026-11-24T16:05:30Z',
    bookFolder: folder,
    json: options.json === true,
    mayAsk: false,
    plain: false,
    columns: 80,
    random: () => 0,
  };
  try {
    const exitCode: number = await command.run({ words, options }, world);
    await acted;
    return { exitCode, out, err };
  } catch (error) {
    if (!(error instanceof Problem)) throw error;
    await acted;
    return { exitCode: error.exitCode, out, err: `${err}${error.what}\n${error.where}\n${error.whatToDo}` };
  }
}
