import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';

const root = path.resolve(import.meta.dirname, '..');

type Room = { readonly name: string; readonly mayImport: readonly string[]; readonly touchesTheWorld: boolean };

const rooms: readonly Room[] = readFileSync(path.join(root, 'DEVELOPERS.md'), 'utf8')
  .split('\n')
  .map((row) => row.split('|').map((cell) => cell.trim()))
  .filter((cells) => cells.length === 6 && /^(yes|no)$/.test(cells[4] ?? ''))
  .map((cells) => ({
    name: cells[1] ?? '',
    mayImport: (cells[3] ?? '')
      .split(',')
      .map((name) => name.trim())
      .filter((name) => name !== '–'),
    touchesTheWorld: cells[4] === 'yes',
  }));

const files = readdirSync(path.join(root, 'src'), { recursive: true, encoding: 'utf8' }).filter((file) =>
  file.endsWith('.ts'),
);

function importsOf(file: string): readonly string[] {
  const text = readFileSync(path.join(root, 'src', file), 'utf8');
  return [
    ...text.matchAll(
      /(?:^|\n)\s*(?:import|export)\b[^;'"]*?from\s*['"]([^'"]+)['"]|\bimport\(\s*['"]([^'"]+)['"]\s*\)|(?:^|\n)import\s+['"]([^'"]+)['"]/g,
    ),
  ].map((match) => match[1] ?? match[2] ?? match[3] ?? '');
}

test('the table in DEVELOPERS.md lists every room once and every folder of src is a room', () => {
  const folders = readdirSync(path.join(root, 'src'), { withFileTypes: true })
    .filter((entry) => entry.isDirectory() && readdirSync(path.join(root, 'src', entry.name)).length > 0)
    .map((entry) => entry.name);
  expect(rooms).toHaveLength(new Set(rooms.map((room) => room.name)).size);
  expect(rooms.length).toBeGreaterThanOrEqual(12);
  expect(folders.filter((folder) => !rooms.some((room) => room.name === folder))).toEqual([]);
});

test('rooms may only import rooms that stand above them', () => {
  const order = rooms.map((room) => room.name);
  for (const [place, room] of rooms.entries()) {
    expect(
      room.mayImport.filter((name) => !order.slice(0, place).includes(name)),
      room.name,
    ).toEqual([]);
  }
});

test('every import points along a listed arrow', () => {
  let arrows = 0;
  const wrong: string[] = [];
  for (const file of files.filter((each) => each.includes(path.sep))) {
    const room = rooms.find((each) => each.name === file.split(path.sep)[0]);
    for (const target of importsOf(file).filter((each) => each.startsWith('.'))) {
      const to = path
        .relative(path.join(root, 'src'), path.resolve(root, 'src', path.dirname(file), target))
        .split(path.sep);
      arrows += 1;
      if (to.length === 1 && to[0] === 'problem.ts') continue;
      if (to[0] !== room?.name && !room?.mayImport.includes(to[0] ?? '')) wrong.push(`${file} -> ${target}`);
    }
  }
  expect(wrong).toEqual([]);
  expect(arrows).toBeGreaterThan(50);
});

test('each file has an export of its own name; the list of those that have not may only shrink', () => {
  const without = files.filter((file) => {
    const own = path.basename(file, '.ts').replaceAll('-', '').toLowerCase();
    const text = readFileSync(path.join(root, 'src', file), 'utf8');
    const exported = [...text.matchAll(/^export (?:async )?(?:function|const|type|class) (\w+)/gm)];
    return !file.endsWith('.d.ts') && !exported.some(([, name]) => name?.toLowerCase() === own);
  });
  const listed = readFileSync(path.join(root, 'tests/without-own-name.txt'), 'utf8').trim().split('\n');
  expect(without.map((file) => file.split(path.sep).join('/')).sort()).toEqual(listed);
});

/** Files that import each other in a circle, each circle once; an import of types alone counts as well. */
function circles(imports: ReadonlyMap<string, readonly string[]>): readonly string[] {
  const found = new Set<string>();
  const done = new Set<string>();
  const follow = (file: string, way: readonly string[]): void => {
    const since = way.indexOf(file);
    if (since >= 0) found.add([...way.slice(since)].sort().join(' '));
    if (since >= 0 || done.has(file)) return;
    for (const next of imports.get(file) ?? []) follow(next, [...way, file]);
    done.add(file);
  };
  for (const file of imports.keys()) follow(file, []);
  return [...found];
}

const importsByFile = new Map(
  files.map((file) => [
    file,
    importsOf(file)
      .filter((target) => target.startsWith('.'))
      .map((target) => path.join(path.dirname(file), target)),
  ]),
);

test('no files import each other in a circle', () => {
  expect(circles(importsByFile)).toEqual([]);
  expect(circles(new Map([...importsByFile, ['problem.ts', ['storage/open-book.ts']]]))).not.toEqual([]);
});

test('within typesetting the arrows point one way: markup, fonts, layout, pdf', () => {
  const order = ['markup', 'fonts', 'layout', 'pdf'];
  const folderOf = (file: string) => order.indexOf(file.split(path.sep)[1] ?? '');
  const within = [...importsByFile].filter(
    ([file]) => file.startsWith(`typesetting${path.sep}`) && folderOf(file) >= 0,
  );
  expect(within.length).toBeGreaterThan(30);
  const wrong = within.flatMap(([file, targets]) =>
    targets
      .filter((target) => target.startsWith(`typesetting${path.sep}`) && folderOf(target) > folderOf(file))
      .map((target) => `${file} -> ${target}`),
  );
  expect(wrong).toEqual([]);
});

const worldly: readonly RegExp[] = [
  /['"]node:/,
  /\bprocess\./,
  /\bDate\.now\b/,
  /\bnew Date\(\s*\)/,
  /\bMath\.random\b/,
  /\bfetch\(/,
  /\bimport\(/,
  /\bperformance\./,
  /\bsetTimeout\(/,
];

test('rooms that do not touch the world use no file system, clock, randomness, process, network or dynamic import', () => {
  const wrong: string[] = [];
  for (const room of rooms.filter((each) => !each.touchesTheWorld)) {
    for (const file of files.filter((each) => each.startsWith(`${room.name}${path.sep}`))) {
      const text = readFileSync(path.join(root, 'src', file), 'utf8');
      for (const pattern of worldly) if (pattern.test(text)) wrong.push(`${file}: ${pattern}`);
    }
  }
  expect(wrong).toEqual([]);
});

test('no file of src is longer than 300 lines, and names are in kebab-case', () => {
  const long = files.filter((file) => readFileSync(path.join(root, 'src', file), 'utf8').split('\n').length > 301);
  expect(long).toEqual([]);
  expect(files.filter((file) => !/^[a-z0-9-]+(\.d)?\.ts$/.test(path.basename(file)))).toEqual([]);
});
