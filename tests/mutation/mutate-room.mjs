import { spawnSync } from 'node:child_process';
import {
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { Instrumenter } from '@stryker-mutator/instrumenter';
import { ignoreExamples } from './ignore-examples.mjs';

// What tests that start the built program would notice, or that take a hundred times as long, counts as survived.
const leftOut = ['tests/evidence/properties.test.ts', 'tests/storage/concurrent-issue.test.ts'];
const bar = { evidence: 8, electrics: 8, rules: 8 };

const root = path.resolve(import.meta.dirname, '../..');
const [room, ...only] = process.argv.slice(2);
if (room === undefined || !existsSync(path.join(root, 'src', room)) || !existsSync(path.join(root, 'tests', room))) {
  console.error('npm run mutation ROOM [FILE…]: ROOM is a folder of src that has tests of its own, such as pricing.');
  process.exit(2);
}

function filesBelow(folder, ending) {
  return readdirSync(path.join(root, folder), { recursive: true })
    .map((name) => path.join(folder, name))
    .filter((name) => name.endsWith(ending))
    .sort();
}

const copy = mkdtempSync(path.join(os.tmpdir(), `keyout-mutants-${room}-`));
for (const name of ['src', 'tests', 'templates', 'sample-jobs', 'package.json', 'tsconfig.json', 'README.md']) {
  cpSync(path.join(root, name), path.join(copy, name), { recursive: true });
}
symlinkSync(path.join(root, 'node_modules'), path.join(copy, 'node_modules'));

const quiet = { debug() {}, info() {}, warn: console.error, error: console.error, isDebugEnabled: () => false };
const sources = filesBelow(`src/${room}`, '.ts').filter((name) => only.length === 0 || only.includes(name));
const { files, mutants } = await new Instrumenter(quiet).instrument(
  sources.map((name) => ({ name, content: readFileSync(path.join(root, name), 'utf8'), mutate: true })),
  { excludedMutations: [], ignorers: [ignoreExamples], plugins: null, noHeader: false },
);
for (const { name, content } of files) writeFileSync(path.join(copy, name), content);

const results = path.join(copy, 'results');
mkdirSync(results);
mkdirSync(path.join(copy, 'mutants'));
for (const file of filesBelow(`tests/${room}`, '.test.ts').filter((name) => !leftOut.includes(name))) {
  writeFileSync(
    path.join(copy, 'mutants', `${path.basename(file, '.test.ts')}.mutants.ts`),
    `import { judgeFile } from '../tests/mutation/judge-file.ts';
test('judges', () => judgeFile(${JSON.stringify(path.join(copy, file))}, ${JSON.stringify(results)}, process.env.KEYOUT_PASS));\n`,
  );
}
const vitest = path.join(root, 'node_modules/vitest/vitest.mjs');
for (const pass of ['quick', 'slow']) {
  const words = [vitest, 'run', '--root', copy, '--config', 'tests/mutation/vitest.config.ts'];
  const run = spawnSync(process.execPath, words, {
    cwd: copy,
    stdio: ['ignore', 'ignore', 'inherit'],
    env: { ...process.env, KEYOUT_PASS: pass },
  });
  if (run.status !== 0) throw new Error(`The ${pass} pass over ${room} did not end well.`);
}

const covered = new Set();
const killed = new Set();
for (const name of readdirSync(results)) {
  const report = JSON.parse(readFileSync(path.join(results, name), 'utf8'));
  for (const id of report.covered) covered.add(id);
  for (const id of report.killed) killed.add(id);
  for (const line of report.skipped) console.log(`${name}: ${line}`);
}
const judged = mutants.filter((mutant) => mutant.status !== 'Ignored');
const missed = judged.filter((mutant) => !killed.has(mutant.id));
const lines = missed.map(({ id, fileName, location, mutatorName, replacement }) => {
  const line = readFileSync(path.join(root, fileName), 'utf8').split('\n')[location.start.line].trim();
  const how = covered.has(id) ? 'survived' : 'not reached';
  return `${path.relative(root, fileName)}:${location.start.line + 1}:${location.start.column} ${how} ${mutatorName}\n    ${line}\n    -> ${replacement.replaceAll(/\s+/g, ' ').slice(0, 160)}`;
});
mkdirSync(path.join(root, 'reports/mutation'), { recursive: true });
const report = path.join(root, `reports/mutation/${room}.txt`);
writeFileSync(report, `${lines.join('\n')}\n`);
const share = (missed.length * 100) / Math.max(1, judged.length);
const most = bar[room] ?? 15;
console.log(
  `${room}: ${judged.length} changes, ${missed.length} not noticed: ${share.toFixed(1)} %, the bar is ${most} %`,
);
console.log(`They stand in ${path.relative(root, report)}.`);
process.exit(share < most ? 0 : 1);
