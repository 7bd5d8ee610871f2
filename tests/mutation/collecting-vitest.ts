type Body = (...values: unknown[]) => unknown;
type Collected = { name: string; body: () => unknown };

/** What one import of a test file declared. */
export type Collection = { tests: Collected[]; before: Body[]; after: Body[]; beforeEach: Body[]; afterEach: Body[] };

const world = globalThis as unknown as { collection: Collection; expect: unknown; vi: unknown };

function bodyOf(parts: unknown[]): Body {
  return parts.find((part) => typeof part === 'function') as Body;
}

function declare(name: string, ...parts: unknown[]): void {
  world.collection.tests.push({ name, body: bodyOf(parts) as () => unknown });
}

function group(_name: string, ...parts: unknown[]): void {
  bodyOf(parts)();
}

function eachOf(run: (name: string, body: () => unknown) => void) {
  return (table: readonly unknown[]) =>
    (name: string, ...parts: unknown[]) => {
      for (const row of table) run(name, () => bodyOf(parts)(...(Array.isArray(row) ? row : [row])));
    };
}

/** Stands in for vitest's own while a room's changes are judged: a test is kept, not run. */
export const test = Object.assign(declare, { each: eachOf(declare) });
const it = test;

export { it };
export const describe = Object.assign(group, { each: eachOf(group) });
export const expect = world.expect;
export const vi = world.vi;
export const beforeAll = (body: Body): number => world.collection.before.push(body);
export const afterAll = (body: Body): number => world.collection.after.push(body);
export const beforeEach = (body: Body): number => world.collection.beforeEach.push(body);
export const afterEach = (body: Body): number => world.collection.afterEach.push(body);
