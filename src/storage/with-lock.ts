import { closeSync, openSync, readFileSync, rmSync, writeSync } from 'node:fs';
import { Problem } from '../problem.ts';

const waitMilliseconds = 10;
const patienceMilliseconds = 20_000;

function isAlive(processNumber: number): boolean {
  try {
    process.kill(processNumber, 0);
    return true;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === 'EPERM';
  }
}

/**
 * Does something while no other process of this machine does it; a lock whose owner died is taken over.
 * @param file the lock file
 * @param action what to do, at once
 * @throws Problem when the lock is not free within twenty seconds
 */
export function withLock<Result>(file: string, action: () => Result): Result {
  for (let waited = 0; ; waited += waitMilliseconds) {
    try {
      const handle = openSync(file, 'wx');
      writeSync(handle, String(process.pid));
      closeSync(handle);
      break;
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code !== 'EEXIST') throw error;
      takeOverDead(file);
      if (waited > patienceMilliseconds)
        throw new Problem(
          'Another keyout is writing the ledger.',
          file,
          'Wait for it to end; if none runs, delete that file.',
        );
      Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, waitMilliseconds);
    }
  }
  try {
    return action();
  } finally {
    rmSync(file, { force: true });
  }
}

function takeOverDead(file: string): void {
  try {
    const owner = Number(readFileSync(file, 'utf8'));
    // an empty file is a lock just being written
    if (owner > 0 && !isAlive(owner)) rmSync(file, { force: true });
  } catch {
    // it was freed in between
  }
}
