import { spawnSync } from 'node:child_process';
import path from 'node:path';

const main = path.resolve(import.meta.dirname, '../../dist/main.js');

/** Runs the built program as a person's shell would, without a terminal. */
export function runKeyout(words: readonly string[], folder: string) {
  const result = spawnSync(process.execPath, [main, ...words], {
    cwd: folder,
    encoding: 'utf8',
    env: { ...process.env, KEYOUT_BOOK: '', XDG_DATA_HOME: path.join(folder, 'no-data') },
  });
  return { exitCode: result.status, out: result.stdout, err: result.stderr };
}
