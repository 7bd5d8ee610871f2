import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { hostname, tmpdir, uptime } from 'node:os';
import path from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { isAlive, withLock, withLockHeld } from '../../src/storage/with-lock.ts';

const root = mkdtempSync(path.join(tmpdir(), 'keyout-lock-'));
afterAll(() => rmSync(root, { recursive: true, force: true }));
const lockOf = (owner: object | string) => {
  const file = path.join(mkdtempSync(path.join(root, 'book-')), 'book.lock');
  writeFileSync(file, typeof owner === 'string' ? owner : JSON.stringify(owner));
  return file;
};
/** The number of a process that has ended. */
const endedProcess = () => spawnSync(process.execPath, ['-e', '']).pid;
const bootedAt = Date.now() - uptime() * 1000;

describe.each([
  ['for an action at once', (file: string) => Promise.resolve().then(() => withLock(file, () => 'done', 50))],
  ['for an action that takes its time', (file: string) => withLockHeld(file, async () => 'done', 50)],
])('a lock %s', (_, held) => {
  test('is made, and freed afterwards', async () => {
    const file = path.join(mkdtempSync(path.join(root, 'book-')), 'book.lock');
    expect(await held(file)).toBe('done');
    expect(readdirSync(path.dirname(file))).toEqual([]);
  });

  // whether a process of another computer still runs cannot be known here, whatever runs under its number here
  test.each([
    ['a number that no process has here', endedProcess()],
    ['the number of a process that runs here', process.pid],
  ])('of another computer is never taken over: %s', async (_name, number) => {
    const owner = { process: number, host: `not-${hostname()}`, since: Date.now() };
    const file = lockOf(owner);
    await expect(held(file)).rejects.toThrow('Another keyout is writing in this book.');
    expect(JSON.parse(readFileSync(file, 'utf8'))).toEqual(owner);
  });

  test('of another computer is not taken over because it is older than this computer’s start', async () => {
    const file = lockOf({ process: endedProcess(), host: `not-${hostname()}`, since: bootedAt - 3_600_000 });
    await expect(held(file)).rejects.toThrow('Another keyout is writing');
    expect(existsSync(file)).toBe(true);
  });

  test('of a process that runs here is not taken over', async () => {
    const file = lockOf({ process: process.pid, host: hostname(), since: Date.now() });
    await expect(held(file)).rejects.toThrow('Another keyout is writing');
    expect(existsSync(file)).toBe(true);
  });

  test('of a process that has ended here is taken over', async () => {
    const file = lockOf({ process: endedProcess(), host: hostname(), since: Date.now() });
    expect(await held(file)).toBe('done');
    expect(readdirSync(path.dirname(file))).toEqual([]);
  });

  test('from before this computer started is taken over, though another process has its number now', async () => {
    const file = lockOf({ process: process.pid, host: hostname(), since: bootedAt - 3_600_000 });
    expect(await held(file)).toBe('done');
  });

  test.each(['', '{', '{}', '{"process":"1"}'])('whose owner cannot be read (%j) is left alone', async (text) => {
    const file = lockOf(text);
    await expect(held(file)).rejects.toThrow('Another keyout is writing');
    expect(readFileSync(file, 'utf8')).toBe(text);
  });

  test('is taken over though a process died while it was breaking it', async () => {
    const dead = { process: endedProcess(), host: hostname(), since: Date.now() };
    const file = lockOf(dead);
    writeFileSync(`${file}.breaker`, JSON.stringify(dead));
    expect(await held(file)).toBe('done');
    expect(readdirSync(path.dirname(file))).toEqual([]);
  });
});

test('the lock is freed when the action fails', async () => {
  const file = path.join(mkdtempSync(path.join(root, 'book-')), 'book.lock');
  const fails = () => {
    throw new Error('no');
  };
  expect(() => withLock(file, fails)).toThrow('no');
  await expect(withLockHeld(file, async () => fails())).rejects.toThrow('no');
  expect(readdirSync(path.dirname(file))).toEqual([]);
});

test('a process that runs is alive, one that ended is not', () => {
  expect(isAlive(process.pid)).toBe(true);
  expect(isAlive(endedProcess() ?? 0)).toBe(false);
});
