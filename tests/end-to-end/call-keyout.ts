import { vi } from 'vitest';
import { runCommandLine } from '../../src/commands/run-command-line.ts';

/** Runs one command line in this process, without a terminal: ten times faster than a process of its own. */
export async function callKeyout(words: readonly string[]) {
  let out = '';
  let err = '';
  const stdout = vi.spyOn(process.stdout, 'write').mockImplementation((text) => {
    out += String(text);
    return true;
  });
  const stderr = vi.spyOn(process.stderr, 'write').mockImplementation((text) => {
    err += String(text);
    return true;
  });
  try {
    const exitCode = await runCommandLine(words);
    return { exitCode, out, err };
  } finally {
    stdout.mockRestore();
    stderr.mockRestore();
  }
}
