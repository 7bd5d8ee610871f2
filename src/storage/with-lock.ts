import { linkSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { hostname, uptime } from 'node:os';
import { setTimeout as pause } from 'node:timers/promises';
import { Problem } from '../problem.ts';

const waitMilliseconds = 10;
const usualPatienceMilliseconds = 60_000;
/** clocks and the reported running time of a machine may differ by this much */
const bootSlackMilliseconds = 60_000;

type Owner = { readonly process: number; readonly host: string; readonly since: number };

/**
 * Whether a process of this machine is still running.
 * @param processNumber the process's number
 */
export function isAlive(processNumber: number): boolean {
  try {
    process.kill(processNumber, 0);
    return true;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === 'EPERM';
  }
}

/**
 * Does something while no other process does it; a lock whose owner died is taken over.
 * @param file the lock file
 * @param action what to do, at once
 * @param patienceMilliseconds how long to wait for another owner
 * @throws Problem when the lock is not free within that time
 */
export function withLock<Result>(
  file: string,
  action: () => Result,
  patienceMilliseconds = usualPatienceMilliseconds,
): Result {
  for (let waited = 0; !claim(file); waited += waitMilliseconds) {
    if (waited > patienceMilliseconds) throw stillHeld(file);
    Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, waitMilliseconds);
  }
  try {
    return action();
  } finally {
    rmSync(file, { force: true });
  }
}

/**
 * The same for an action that takes its time; others of the same process wait for it too.
 * @param file the lock file
 * @param action what to do
 * @param patienceMilliseconds how long to wait for another owner
 * @throws Problem when the lock is not free within that time
 */
export async function withLockHeld<Result>(
  file: string,
  action: () => Promise<Result>,
  patienceMilliseconds = usualPatienceMilliseconds,
): Promise<Result> {
  for (let waited = 0; !claim(file); waited += waitMilliseconds) {
    if (waited > patienceMilliseconds) throw stillHeld(file);
    await pause(waitMilliseconds);
  }
  try {
    return await action();
  } finally {
    rmSync(file, { force: true });
  }
}

function stillHeld(file: string): Problem {
  return new Problem(
    'Another keyout is writing in this book.',
    file,
    'Wait for it to end; if none runs on any machine that shares the book, delete that file.',
    1,
  );
}

// the lock appears whole (link of a written file): a lock without its owner's name could never be taken over
function claim(file: string): boolean {
  const temporary = `${file}.${process.pid}.temporary`;
  const owner: Owner = { process: process.pid, host: hostname(), since: Date.now() };
  writeFileSync(temporary, JSON.stringify(owner));
  try {
    linkSync(temporary, file);
    return true;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'EEXIST') throw error;
    if (isOwnerDead(file)) breakLock(file);
    return false;
  } finally {
    rmSync(temporary, { force: true });
  }
}

function isOwnerDead(file: string): boolean {
  let owner: Partial<Owner>;
  try {
    owner = JSON.parse(readFileSync(file, 'utf8')) as Partial<Owner>;
  } catch {
    return false;
  }
  const { process: number, host, since } = owner;
  if (typeof number !== 'number' || host !== hostname()) return false;
  const booted = Date.now() - uptime() * 1000 - bootSlackMilliseconds;
  return !isAlive(number) || (typeof since === 'number' && since < booted);
}

// Only who holds the breaker may remove a dead lock, and looks again first: else the second of two
// waiters would remove the lock that the first has just taken.
function breakLock(file: string): void {
  const breaker = `${file}.breaker`;
  try {
    writeFileSync(breaker, JSON.stringify({ process: process.pid, host: hostname(), since: Date.now() }), {
      flag: 'wx',
    });
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'EEXIST') throw error;
    if (isOwnerDead(breaker)) rmSync(breaker, { force: true });
    return;
  }
  try {
    if (isOwnerDead(file)) rmSync(file, { force: true });
  } finally {
    rmSync(breaker, { force: true });
  }
}
