// Ratios measured side by side in one run: never absolute times, never part of the tests.
import { spawnSync } from 'node:child_process';
import path from 'node:path';
import { build } from 'rolldown';

const root = path.resolve(import.meta.dirname, '../..');
const median = (numbers) => numbers.toSorted((one, other) => one - other)[Math.floor(numbers.length / 2)];

function timed(run) {
  const start = process.hrtime.bigint();
  run();
  return Number(process.hrtime.bigint() - start) / 1e6;
}

const node = (words) => () => spawnSync(process.execPath, words, { cwd: root });
const bare = [];
const help = [];
for (let turn = 0; turn < 21; turn += 1) {
  bare.push(timed(node(['-e', '0'])));
  help.push(timed(node(['dist/main.js', '--help'])));
}
console.log(
  `start-up: keyout --help ${median(help).toFixed(0)} ms, bare node ${median(bare).toFixed(0)} ms, ratio ${(median(help) / median(bare)).toFixed(2)}`,
);

const made = path.join(root, 'reports/programs/document-bench.js');
await build({
  input: path.join(root, 'tests/bench/document-bench.mjs'),
  platform: 'node',
  external: ['sharp', 'pdfkit', 'pdfmake'],
  output: { file: made, format: 'esm', codeSplitting: false },
});
spawnSync(process.execPath, [made], { cwd: root, stdio: 'inherit' });
