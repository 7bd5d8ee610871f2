import { spawn } from 'node:child_process';
import { cpSync, existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { preview } from '../../src/commands/preview.ts';
import { runCommand } from './run-command.ts';

const root = mkdtempSync(path.join(tmpdir(), 'keyout-preview-'));
afterAll(() => rmSync(root, { recursive: true, force: true }));
const main = path.resolve(import.meta.dirname, '../../dist/main.js');
const id = '2026-11-24-KX4D';

function sampleBook(): string {
  const folder = mkdtempSync(path.join(root, 'book-'));
  cpSync(path.resolve(import.meta.dirname, '../../sample-jobs'), folder, { recursive: true });
  return folder;
}
const own = (folder: string, name: string) => path.join(folder, 'templates', `${name}.hbs`);
const pdf = (folder: string, kind: string) =>
  readFileSync(path.join(folder, 'out', 'preview', `${kind}.pdf`)).toString('latin1');

describe('keyout preview', () => {
  test('prints a handover sheet from the book’s own copy, which it made, and neither issues nor enters anything', async () => {
    const folder = sampleBook();
    const printed = await runCommand(preview, folder, ['handover', id], { once: true, copy: true });
    expect(printed).toMatchObject({ exitCode: 0, out: `out/preview/handover.pdf  2 pages\n` });
    expect(printed.err).toContain(own(folder, 'handover'));
    expect(pdf(folder, 'handover')).toMatch(/^%PDF-/);
    expect(existsSync(path.join(folder, 'ledger.jsonl'))).toBe(false);
  });

  test('prints an invoice as it would be issued, without a number taken', async () => {
    const folder = sampleBook();
    const printed = await runCommand(preview, folder, ['invoice', id], { once: true, json: true });
    expect(JSON.parse(printed.out)).toMatchObject({ file: 'out/preview/invoice.pdf', pages: 1 });
    expect(existsSync(path.join(folder, 'issued'))).toBe(false);
  });

  test('takes the handover sheet of the last job when nothing is named', async () => {
    const folder = sampleBook();
    expect((await runCommand(preview, folder, [], { once: true })).out).toContain('handover.pdf');
    expect((await runCommand(preview, folder, ['invoice'], { once: true })).out).toContain('invoice.pdf');
  });

  test('leaves a copy that exists as it is', async () => {
    const folder = sampleBook();
    await runCommand(preview, folder, [id], { once: true, copy: true });
    const changed = readFileSync(own(folder, 'handover'), 'utf8').replace('</document>', '<p>Mine.</p></document>');
    writeFileSync(own(folder, 'handover'), changed);
    await runCommand(preview, folder, [id], { once: true, copy: true });
    expect(readFileSync(own(folder, 'handover'), 'utf8')).toBe(changed);
  });

  test.each<[string, (text: string) => string, RegExp]>([
    ['an unknown name', (text) => text.replace('{{vehicle}}', '{{vehikle}}'), /vehikle/],
    ['a block that is not closed', (text) => `${text}{{#if job}}`, /cannot be filled/],
    ['a tag that does not exist', (text) => text.replace('</document>', '<blink>x</blink></document>'), /<blink>/],
  ])('names the line of %s', async (_, change, what) => {
    const folder = sampleBook();
    await runCommand(preview, folder, [id], { once: true, copy: true });
    const wrong = change(readFileSync(own(folder, 'handover'), 'utf8'));
    writeFileSync(own(folder, 'handover'), wrong);
    const line = wrong.split('\n').findIndex((each) => /vehikle|<blink>|if job}}/.test(each)) + 1;
    const mistaken = await runCommand(preview, folder, [id], { once: true });
    expect(mistaken.exitCode).toBe(3);
    expect(mistaken.err).toMatch(what);
    expect(mistaken.err).toContain(`handover.hbs, line ${line}`);
  });

  test('two jobs at once, or a job that is not there, is a wrong call', async () => {
    const folder = sampleBook();
    expect((await runCommand(preview, folder, ['handover', id, id], { once: true })).exitCode).toBe(2);
    expect((await runCommand(preview, folder, ['letter'], { once: true })).exitCode).toBe(2);
  });

  test('prints anew on every save, tells a mistake and goes on, until it is stopped', async () => {
    const folder = sampleBook();
    await runCommand(preview, folder, [id], { once: true, copy: true });
    const sound = readFileSync(own(folder, 'handover'), 'utf8');
    const child = spawn(process.execPath, [main, 'preview', 'handover', id, '--book', folder]);
    const heard = listen(child);
    const ended = new Promise((resolve) => child.on('close', resolve));
    try {
      await heard((out) => out.split('handover.pdf').length === 2);
      writeFileSync(own(folder, 'handover'), sound.replace('</document>', '<blink>x</blink></document>'));
      await heard((_, err) => err.includes('<blink>'));
      writeFileSync(own(folder, 'handover'), sound);
      await heard((out) => out.split('handover.pdf').length === 3);
      child.kill('SIGINT');
      expect(await ended).toBe(0);
    } finally {
      child.kill('SIGKILL');
    }
  });
});

/** Waits, without a clock of its own, until what a process has said so far is as wanted. */
function listen(child: ReturnType<typeof spawn>) {
  let [out, err] = ['', ''];
  let wanted: (() => void) | null = null;
  child.stdout?.on('data', (part) => {
    out += String(part);
    wanted?.();
  });
  child.stderr?.on('data', (part) => {
    err += String(part);
    wanted?.();
  });
  return (isThere: (out: string, err: string) => boolean) =>
    new Promise<void>((resolve, reject) => {
      wanted = () => {
        if (isThere(out, err)) resolve();
      };
      child.on('close', () => reject(new Error(`it ended: ${out}${err}`)));
      wanted();
    });
}
