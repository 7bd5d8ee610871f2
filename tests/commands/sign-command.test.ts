import { spawn, spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { appendFileSync, cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { check } from '../../src/commands/check.ts';
import type { Call } from '../../src/commands/command.ts';
import { day } from '../../src/commands/day.ts';
import { handover } from '../../src/commands/handover.ts';
import { sign } from '../../src/commands/sign.ts';
import { nextQuestion, questions } from '../../src/prompts/interview.ts';
import type { Job } from '../../src/records/job.ts';
import { readJob, writeJob } from '../../src/storage/jobs.ts';
import { readLedger } from '../../src/storage/ledger.ts';
import { openBook } from '../../src/storage/open-book.ts';
import { signatureState } from '../../src/storage/signature-state.ts';
import { verifyBook } from '../../src/storage/verify-book.ts';
import { runCommand } from './run-command.ts';

const root = mkdtempSync(path.join(tmpdir(), 'keyout-sign-'));
afterAll(() => rmSync(root, { recursive: true, force: true }));
const main = path.resolve(import.meta.dirname, '../../dist/main.js');
const id = '2026-11-24-KX4D';
const sha256 = (bytes: Uint8Array) => createHash('sha256').update(bytes).digest('hex');

/** A copy of the sample book in which nobody has signed the van yet. */
function unsignedBook(): string {
  const folder = mkdtempSync(path.join(root, 'book-'));
  cpSync(path.resolve(import.meta.dirname, '../../sample-jobs'), folder, { recursive: true });
  change(folder, ({ signature: _signature, ...job }) => job);
  return folder;
}
const jobOf = (folder: string) => readJob(openBook(folder), id);
function change(folder: string, changed: (job: Job) => Job) {
  writeJob(openBook(folder), changed(jobOf(folder)));
}
const signedEntries = (folder: string) => readLedger(openBook(folder)).filter((entry) => entry.event === 'signed');

const signing = (folder: string, options: Call['options'], act?: (url: string) => unknown) =>
  runCommand(sign, folder, [id], options, act);
function answer(url: string, sent: object) {
  const headers = { 'content-type': 'application/json', origin: new URL(url).origin };
  return fetch(url, { method: 'POST', headers, body: JSON.stringify(sent) });
}
const drawn = { strokes: [[0, 0, 500, 300, 900, 100]], strokesWidth: 10_000, strokesHeight: 5000 };

describe('keyout sign', () => {
  test('keeps strokes, name, time and the digest of exactly what was shown, and prints the sheet anew', async () => {
    const folder = unsignedBook();
    let page = '';
    const signed = await signing(folder, { json: true }, async (url) => {
      page = await (await fetch(url)).text();
      await answer(url, { answer: 'accepts with remark', name: 'Ada Quill', remark: 'Clean work.', ...drawn });
    });
    expect(signed.exitCode).toBe(0);
    const { signature } = jobOf(folder);
    expect(signature).toMatchObject({
      answer: 'accepts with remark',
      name: 'Ada Quill',
      remark: 'Clean work.',
      ...drawn,
    });
    // 16:05 UTC on the clock of the sample business (America/Denver, UTC-7 in winter)
    expect(signature?.signedAt).toBe('2026-11-24T09:05');
    const kept = readdirSync(path.join(folder, 'photos', id)).filter((name) => name.startsWith('shown-'));
    const words = readFileSync(path.join(folder, 'photos', id, kept[0] ?? ''));
    expect(kept).toHaveLength(1);
    expect(sha256(words)).toBe(signature?.digest);
    const plain = page
      .replaceAll('&#x27;', "'")
      .replaceAll('&quot;', '"')
      .replaceAll('&amp;', '&')
      .replaceAll('&#x3D;', '=');
    for (const line of words.toString('utf8').split('\n'))
      expect(plain).toContain(line.replace(/^- /, '').replace(/^[\p{L}’() ]+: (?=.*)/u, ''));
    expect(signedEntries(folder)).toMatchObject([
      {
        job: id,
        answer: 'accepts with remark',
        digest: signature?.digest,
        files: [{ path: `photos/${id}/${kept[0]}` }],
      },
    ]);
    expect(signatureState(jobOf(folder))).toBe('stands');
    const told = JSON.parse(signed.out) as { sheet: string; digest: string };
    expect(told).toMatchObject({
      job: id,
      answer: 'accepts with remark',
      name: 'Ada Quill',
      digest: signature?.digest,
    });
    const sheet = spawnSync('pdftotext', ['-layout', path.join(folder, told.sheet), '-'], { encoding: 'utf8' }).stdout;
    expect(sheet).toContain('Clean work.');
  });

  test('a signature that stands is not asked for again, unless told; what only the invoice uses leaves it standing', async () => {
    const folder = unsignedBook();
    await signing(folder, {}, (url) => answer(url, { answer: 'accepts', name: 'Ada Quill' }));
    change(folder, (job) => ({ ...job, depositMinorUnits: 2500 }));
    const again = await signing(folder, {});
    expect(again.exitCode).toBe(1);
    expect(again.err).toContain('Ada Quill has signed already');
    const anew = await signing(folder, { again: true }, (url) =>
      answer(url, { answer: 'refuses', name: 'B. Vale', remark: 'Lamp on.' }),
    );
    expect(anew.exitCode).toBe(0);
    expect(signedEntries(folder).map((entry) => 'answer' in entry && entry.answer)).toEqual(['accepts', 'refuses']);
  });

  test('a change after signing voids it: said by check, and signed anew without more words', async () => {
    const folder = unsignedBook();
    await signing(folder, {}, (url) => answer(url, { answer: 'accepts', name: 'Ada Quill' }));
    change(folder, (job) => ({ ...job, vehicle: { ...job.vehicle, plate: 'VLT 9999' } }));
    expect(signatureState(jobOf(folder))).toBe('void');
    expect((await runCommand(check, folder, [id], {})).out).toContain('the signature is void');
    const anew = await signing(folder, {}, (url) => answer(url, { answer: 'accepts', name: 'Ada Quill' }));
    expect(anew.exitCode).toBe(0);
    expect(signatureState(jobOf(folder))).toBe('stands');
  });

  test('a job changed while the page was open is not signed', async () => {
    const folder = unsignedBook();
    let reply = '';
    const ended = await signing(folder, {}, async (url) => {
      change(folder, (job) => ({ ...job, notes: 'Something else.' }));
      reply = await (await answer(url, { answer: 'accepts', name: 'Ada Quill' })).text();
    });
    expect(reply).toContain('changed after the sheet was shown');
    expect(ended.exitCode).toBe(1);
    expect(ended.err).toContain('Show the sheet again');
    expect([jobOf(folder).signature, signedEntries(folder)]).toEqual([undefined, []]);
  });

  test('the words shown are part of the book that `verify` proves', async () => {
    const folder = unsignedBook();
    await signing(folder, {}, (url) => answer(url, { answer: 'accepts', name: 'Ada Quill' }));
    expect(verifyBook(openBook(folder))).toEqual([]);
    const kept = readdirSync(path.join(folder, 'photos', id)).find((name) => name.startsWith('shown-')) ?? '';
    appendFileSync(path.join(folder, 'photos', id, kept), 'And a new engine.\n');
    expect(verifyBook(openBook(folder))).toMatchObject([
      { where: `photos/${id}/${kept}`, what: 'The file was altered after it was signed.' },
    ]);
  });

  test('the interview does not ask for the signature again', async () => {
    const folder = unsignedBook();
    const answered = { answered: questions.filter(({ id: each }) => each !== 'signature').map((each) => each.id) };
    expect(nextQuestion({ ...jobOf(folder), interview: answered })?.id).toBe('signature');
    await signing(folder, {}, (url) => answer(url, { answer: 'accepts', name: 'Ada Quill' }));
    expect(nextQuestion({ ...jobOf(folder), interview: answered })).toBeUndefined();
  });

  test('of two pages open for one job, the first that is signed counts', async () => {
    const folder = unsignedBook();
    let inner: Awaited<ReturnType<typeof signing>> | null = null;
    const outer = await signing(folder, {}, async (url) => {
      inner = await signing(folder, {}, (other) => answer(other, { answer: 'accepts', name: 'First Hand' }));
      await answer(url, { answer: 'refuses', name: 'Second Hand', remark: 'Lamp on.' });
    });
    expect(inner).toMatchObject({ exitCode: 0 });
    expect(outer.exitCode).toBe(1);
    expect(outer.err).toContain('signed elsewhere meanwhile (First Hand)');
    expect(jobOf(folder).signature?.name).toBe('First Hand');
    expect(signedEntries(folder)).toHaveLength(1);
  });

  test('a stop from the keyboard ends it without a signature, with exit code 130', async () => {
    const folder = unsignedBook();
    const child = spawn(process.execPath, [main, 'sign', id, '--book', folder]);
    const ended = new Promise<number | null>((resolve) => child.on('close', resolve));
    child.stderr.on('data', (part) => {
      if (String(part).includes('http://')) child.kill('SIGINT');
    });
    expect(await ended).toBe(130);
    expect(jobOf(folder).signature).toBeUndefined();
  });

  test('a job that a finding stops is not shown for signing', async () => {
    const stopped = await runCommand(sign, unsignedBook(), ['2026-11-24-7QTR'], {});
    expect(stopped.exitCode).toBe(1);
    expect(stopped.err).toContain('cannot be signed yet');
  });

  test('an entry that a stop left out of the ledger is made good the next time', async () => {
    const folder = unsignedBook();
    await signing(folder, {}, (url) => answer(url, { answer: 'accepts', name: 'Ada Quill' }));
    for (const name of readdirSync(folder).filter((each) => each.startsWith('ledger'))) rmSync(path.join(folder, name));
    expect((await signing(folder, {})).exitCode).toBe(1);
    expect(signedEntries(folder)).toHaveLength(1);
  });

  test.each<[readonly string[], Call['options'], RegExp]>([
    [[], {}, /One job/],
    [[id, id], {}, /One job/],
    [[id], { minutes: '0' }, /--minutes/],
    [[id], { port: 'x' }, /--port/],
    [[id], { address: '203.0.113.1' }, /--address/],
  ])('a wrong call is named: %j %j', async (words, options, says) => {
    const wrong = await runCommand(sign, unsignedBook(), words, options);
    expect(wrong.exitCode).toBe(2);
    expect(wrong.err).toMatch(says);
  });

  test('shows the address as a code when asked', async () => {
    const shown = await signing(unsignedBook(), { qr: true }, (url) =>
      answer(url, { answer: 'accepts', name: 'Ada Quill' }),
    );
    expect(shown.err).toMatch(/█▀▀▀▀▀█/);
  });
});

describe('the scan of a sheet signed with a pen', () => {
  const scan = path.join(root, 'scan.pdf');
  writeFileSync(scan, '%PDF-1.4\n% a scan\n');
  const file = (folder: string, options: Call['options']) => runCommand(sign, folder, [id], { scan, ...options });
  const adaAccepts = { name: 'Ada Quill', answer: 'accepts' };
  const print = (folder: string) => runCommand(handover, folder, [id], {});

  test('is copied into the book, bound to the sheet that was printed, and noted in the ledger', async () => {
    const folder = unsignedBook();
    await print(folder);
    const printed = readLedger(openBook(folder)).find((entry) => entry.event === 'handed over');
    const filed = await file(folder, adaAccepts);
    expect(filed.exitCode).toBe(0);
    const { signature } = jobOf(folder);
    expect(signature).toMatchObject({
      answer: 'accepts',
      name: 'Ada Quill',
      digest: printed?.event === 'handed over' ? printed.files[0]?.sha256 : '',
    });
    expect(readFileSync(path.join(folder, 'photos', id, signature?.scan ?? ''))).toEqual(readFileSync(scan));
    expect(signedEntries(folder)).toMatchObject([
      { files: [{ path: `photos/${id}/${signature?.scan}`, sha256: sha256(readFileSync(scan)) }] },
    ]);
    expect(signatureState(jobOf(folder))).toBe('stands');
  });

  test('is refused when no sheet of the present record was printed', async () => {
    const folder = unsignedBook();
    expect((await file(folder, adaAccepts)).err).toContain('No sheet was printed');
    await print(folder);
    change(folder, (job) => ({ ...job, notes: 'Something else.' }));
    const refused = await file(folder, adaAccepts);
    expect(refused.exitCode).toBe(1);
    expect(jobOf(folder).signature).toBeUndefined();
  });

  test.each<[string, Call['options'], Uint8Array | string | null, number, RegExp]>([
    ['without a name', { answer: 'accepts' }, '%PDF-1.4', 2, /--name/],
    ['without an answer', { name: 'Ada' }, '%PDF-1.4', 2, /--answer/],
    ['with another answer', { name: 'Ada', answer: 'perhaps' }, '%PDF-1.4', 2, /--answer/],
    ['that is no picture', adaAccepts, 'hello', 3, /neither a PDF/],
    ['that is empty', adaAccepts, '', 3, /neither a PDF/],
    ['that is not there', adaAccepts, null, 3, /does not exist/],
  ])('a scan %s is refused', async (_, options, bytes, exitCode, says) => {
    const folder = unsignedBook();
    await print(folder);
    const own = path.join(folder, 'own-scan');
    if (bytes !== null) writeFileSync(own, bytes);
    const refused = await file(folder, { scan: own, ...options });
    expect(refused.err).toMatch(says);
    expect(refused.exitCode).toBe(exitCode);
  });
});

describe('the day’s list', () => {
  const openOf = async (folder: string) => {
    const { out } = await runCommand(day, folder, ['2026-11-24'], { json: true });
    const finished = JSON.parse(out) as { jobs: { job: string; open: string[] }[] };
    return finished.jobs.find((each) => each.job === id)?.open;
  };

  test('names a job unsigned, refused or with a void signature, and one that is signed not at all', async () => {
    const folder = unsignedBook();
    expect(await openOf(folder)).toEqual(['unsigned']);
    await signing(folder, {}, (url) => answer(url, { answer: 'refuses', name: 'Ada Quill', remark: 'Lamp on.' }));
    expect(await openOf(folder)).toEqual(['refused: Lamp on.']);
    await signing(folder, { again: true }, (url) => answer(url, { answer: 'accepts', name: 'Ada Quill' }));
    expect(await openOf(folder)).toEqual([]);
    change(folder, (job) => ({ ...job, notes: 'Something else.' }));
    expect(await openOf(folder)).toEqual(['signature void: the record was changed after signing']);
  });

  test('a void signature is printed as void on the sheet', async () => {
    const folder = unsignedBook();
    await signing(folder, {}, (url) => answer(url, { answer: 'accepts', name: 'Ada Quill', ...drawn }));
    change(folder, (job) => ({ ...job, notes: 'Something else.' }));
    const [sheet = ''] = (await runCommand(handover, folder, [id])).out.split('\n');
    const text = spawnSync('pdftotext', ['-layout', path.join(folder, sheet), '-'], { encoding: 'utf8' }).stdout;
    expect(text.replace(/\s+/g, ' ')).toContain('This signature is void: the record was changed after signing.');
  });
});
