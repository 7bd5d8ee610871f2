// Ratios measured side by side in one run: never absolute times, never part of the tests.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import path from 'node:path';

const root = path.resolve(import.meta.dirname, '../..');
const require = createRequire(import.meta.url);
const median = (numbers) => numbers.toSorted((one, other) => one - other)[Math.floor(numbers.length / 2)];

function timed(run) {
  const start = process.hrtime.bigint();
  run();
  return Number(process.hrtime.bigint() - start) / 1e6;
}

async function timedAsync(run) {
  const start = process.hrtime.bigint();
  await run();
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

const folder = mkdtempSync(path.join(tmpdir(), 'keyout-bench-'));
spawnSync(process.execPath, ['dist/main.js', 'demo', folder], { cwd: root });
const { openBook } = await import('../../dist/storage/open-book.js');
const { readJob } = await import('../../dist/storage/jobs.js');
const { examineJob } = await import('../../dist/commands/examine-job.js');
const { renderHandover } = await import('../../dist/commands/render-handover.js');
const book = await openBook(folder);
const job = await readJob(book, '2026-11-24-KX4D');
const examined = await examineJob(book, job);
const { default: PdfKit } = await import('pdfkit');
const fonts = path.dirname(require.resolve('dejavu-fonts-ttf/package.json'));
const regular = readFileSync(path.join(fonts, 'ttf/DejaVuSans.ttf'));
const words = (await renderHandover(book, examined)).text;

function withPdfKit() {
  return new Promise((resolve) => {
    const document = new PdfKit({ size: 'LETTER' });
    document.on('data', () => {});
    document.on('end', resolve);
    document.registerFont('text', regular);
    document.font('text').fontSize(9.5).text(words);
    document.end();
  });
}

const ours = [];
const theirs = [];
for (let turn = 0; turn < 11; turn += 1) {
  ours.push(await timedAsync(() => renderHandover(book, examined)));
  theirs.push(await timedAsync(withPdfKit));
}
console.log(
  `one handover sheet: keyout ${median(ours).toFixed(0)} ms, pdfkit with the same words ${median(theirs).toFixed(0)} ms, ratio ${(median(ours) / median(theirs)).toFixed(2)}`,
);
rmSync(folder, { recursive: true, force: true });
