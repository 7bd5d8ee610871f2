// Makes the two pictures of README.md from the demo's own output (needs pdftoppm): a scale a screen can read, few greys.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import sharp from 'sharp';

const root = path.resolve(import.meta.dirname, '../..');
const folder = mkdtempSync(path.join(tmpdir(), 'keyout-pictures-'));
spawnSync(process.execPath, [path.join(root, 'dist/main.js'), 'demo', folder]);
for (const [name, file] of [
  ['handover', 'out/2026-11-24/2026-11-24-KX4D-handover.pdf'],
  ['invoice', 'issued/2026/INV-0001/invoice.pdf'],
]) {
  const words = ['-r', '90', '-gray', '-png', '-f', '1', '-singlefile', path.join(folder, file)];
  const page = spawnSync('pdftoppm', words, { maxBuffer: 1e8 }).stdout;
  await sharp(page)
    .png({ palette: true, colours: 16, compressionLevel: 9 })
    .toFile(path.join(import.meta.dirname, `${name}.png`));
}
rmSync(folder, { recursive: true, force: true });
