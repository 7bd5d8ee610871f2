import { readdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import fc from 'fast-check';
import { vi } from 'vitest';
import type { Collection } from './collecting-vitest.ts';

type Counts = Record<string, number>;
type Namespace = {
  activeMutant?: string;
  currentTestId?: string;
  hitCount?: number;
  hitLimit?: number;
  mutantCoverage: { static: Counts; perTest: Record<string, Counts> };
};
type Timed = { index: number; milliseconds: number };

const quickMilliseconds = 60;
const slowestMilliseconds = 400;
const propertyMilliseconds = 150;
const patienceMilliseconds = 20_000;
const world = globalThis as unknown as { __stryker__: Namespace; collection: Collection };

async function collect(file: string): Promise<Collection> {
  vi.resetModules();
  const collection: Collection = { tests: [], before: [], after: [], beforeEach: [], afterEach: [] };
  world.collection = collection;
  await import(/* @vite-ignore */ file);
  for (const body of collection.before) await body();
  return collection;
}

async function passes(collection: Collection, index: number): Promise<boolean> {
  let timer: NodeJS.Timeout | undefined;
  try {
    const run = async () => {
      for (const body of collection.beforeEach) await body();
      await collection.tests[index]?.body();
      for (const body of collection.afterEach) await body();
    };
    const late = new Promise((_, refuse) => {
      timer = setTimeout(() => refuse(new Error('too long')), patienceMilliseconds);
    });
    await Promise.race([run(), late]);
    return true;
  } catch {
    return false;
  } finally {
    clearTimeout(timer);
  }
}

function killedElsewhere(folder: string): Set<string> {
  const killed = new Set<string>();
  for (const name of readdirSync(folder).filter((each) => each.endsWith('.json'))) {
    for (const id of JSON.parse(readFileSync(path.join(folder, name), 'utf8')).killed) killed.add(id);
  }
  return killed;
}

/**
 * Runs the tests of one file against every change that they reach and nothing has noticed yet, and writes which they notice.
 * @param file the test file
 * @param folder where the results of all files stand
 * @param pass first the quick tests, then the slow ones for what is left
 */
export async function judgeFile(file: string, folder: string, pass: 'quick' | 'slow'): Promise<void> {
  world.__stryker__ = { mutantCoverage: { static: {}, perTest: {} } };
  const name = world.__stryker__;
  fc.configureGlobal({ interruptAfterTimeLimit: propertyMilliseconds });
  let collection = await collect(file);
  const timed: Timed[] = [];
  const skipped: string[] = [];
  for (const [index, { name: title }] of collection.tests.entries()) {
    name.currentTestId = String(index);
    const start = performance.now();
    const sound = await passes(collection, index);
    const milliseconds = performance.now() - start;
    const isQuick = milliseconds <= quickMilliseconds;
    if (sound && milliseconds <= slowestMilliseconds) {
      if (isQuick === (pass === 'quick')) timed.push({ index, milliseconds });
    } else skipped.push(`${sound ? 'slow' : 'FAILS'}: ${title}`);
  }
  delete name.currentTestId;
  timed.sort((a, b) => a.milliseconds - b.milliseconds);
  const { static: atLoad, perTest } = structuredClone(name.mutantCoverage);
  const covered = new Set([...Object.keys(atLoad), ...timed.flatMap(({ index }) => Object.keys(perTest[index] ?? {}))]);
  const killed: string[] = [];
  const results = path.join(folder, `${path.basename(file)}.${pass}.json`);
  const save = () => {
    writeFileSync(`${results}.part`, JSON.stringify({ covered: [...covered], killed, skipped }));
    renameSync(`${results}.part`, results);
  };
  save();
  let elsewhere = killedElsewhere(folder);
  let lookedAt = performance.now();
  // those that count while the file loads need it loaded afresh, so they come last
  const inOrder = [...covered].sort((one, other) => Number(one in atLoad) - Number(other in atLoad));
  for (const id of inOrder) {
    if (performance.now() - lookedAt > 1_000) {
      save();
      elsewhere = killedElsewhere(folder);
      lookedAt = performance.now();
    }
    if (elsewhere.has(id)) continue;
    const isStatic = id in atLoad;
    const judges = isStatic ? timed : timed.filter(({ index }) => perTest[index]?.[id] !== undefined);
    const hits = Math.max(0, ...judges.map(({ index }) => perTest[index]?.[id] ?? 0));
    name.activeMutant = id;
    name.hitCount = 0;
    name.hitLimit = (hits + 10) * 200;
    let noticed = false;
    try {
      if (isStatic) collection = await collect(file);
    } catch {
      noticed = true;
    }
    for (const { index } of judges) {
      if (noticed) break;
      name.hitCount = 0;
      noticed = !(await passes(collection, index));
    }
    delete name.activeMutant;
    delete name.hitCount;
    if (noticed) killed.push(id);
    if (isStatic) for (const body of collection.after) await body();
  }
  collection = await collect(file);
  const sound = await Promise.all(timed.map(({ index }) => passes(collection, index)));
  if (sound.includes(false)) skipped.push('SPOILED: a test fails without a change after the changes were tried');
  for (const body of collection.after) await body();
  save();
}
