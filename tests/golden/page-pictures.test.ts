import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { examineJob } from '../../src/operations/examine-job.ts';
import { renderHandover } from '../../src/operations/render-handover.ts';
import { typesetInvoice } from '../../src/operations/render-invoice.ts';
import { makeCreditNote } from '../pricing/worded.ts';
import { readJob } from '../../src/storage/jobs.ts';
import { finishedSampleDay } from './finished-sample-day.ts';

const dotsPerInch = 100;
/** A pixel counts as another one when it differs by more than this, of 255: edges drawn a little softer do not. */
const shadeTolerance = 96;
/** Share of a page that may differ: some dozens of pixels, where one changed word is hundreds. */
const shareTolerance = 0.0001;
const folder = path.join(import.meta.dirname, 'pages');

let day: Awaited<ReturnType<typeof finishedSampleDay>>;
beforeAll(async () => {
  day = await finishedSampleDay();
  mkdirSync(folder, { recursive: true });
});
afterAll(() => rmSync(day.folder, { recursive: true, force: true }));

/** The pages of a PDF as an independent reader draws them, grey, PNG. */
function drawn(pdf: Uint8Array, name: string): readonly Buffer[] {
  const file = path.join(day.folder, `${name}.pdf`);
  writeFileSync(file, pdf);
  const pages = Number(/Pages:\s+(\d+)/.exec(spawnSync('pdfinfo', [file], { encoding: 'utf8' }).stdout)?.[1]);
  return Array.from({ length: pages }, (_, place) => {
    const page = String(place + 1);
    const words = ['-r', String(dotsPerInch), '-gray', '-png', '-f', page, '-l', page, file];
    return spawnSync('pdftoppm', words, { maxBuffer: 1e8 }).stdout;
  });
}

/** The share of pixels that differ; 1 where the pages have another size. */
async function difference(one: Buffer | string, other: Buffer): Promise<number> {
  const [first, second] = await Promise.all(
    [one, other].map((each) => sharp(each).greyscale().raw().toBuffer({ resolveWithObject: true })),
  );
  if (first === undefined || second === undefined) return 1;
  if (first.info.width !== second.info.width || first.info.height !== second.info.height) return 1;
  let count = 0;
  for (let place = 0; place < first.data.length; place += 1)
    if (Math.abs((first.data[place] ?? 0) - (second.data[place] ?? 0)) > shadeTolerance) count += 1;
  return count / first.data.length;
}

// `npm run accept` makes the pictures anew, a first run makes those that are missing
const accepting = () =>
  (expect.getState() as unknown as { snapshotState: { _updateSnapshot: string } }).snapshotState._updateSnapshot;

async function holds(pdf: Uint8Array, name: string): Promise<void> {
  const pages = drawn(pdf, name);
  for (const [place, page] of pages.entries()) {
    const file = path.join(folder, `${name}-${place + 1}.png`);
    if (
      accepting() === 'all'
        ? !existsSync(file) || (await difference(file, page)) > 0
        : accepting() === 'new' && !existsSync(file)
    )
      await sharp(page).greyscale().png({ palette: true, colours: 16, compressionLevel: 9 }).toFile(file);
    expect(await difference(file, page), `${name}, page ${place + 1}`).toBeLessThanOrEqual(shareTolerance);
  }
  const kept = readdirSync(folder).filter((file) => file.startsWith(`${name}-`));
  expect(kept).toHaveLength(pages.length);
}

const sheetOf = async (code: string, change = (text: string) => text) => {
  const job = readJob(day.book, `2026-11-24-${code}`);
  const changed = JSON.parse(change(JSON.stringify(job))) as typeof job;
  return (await renderHandover(day.book, await examineJob(day.book, changed))).pdf;
};
const invoiceOf = (number: string) => {
  const found = day.invoices.find((each) => each.number === number);
  if (found === undefined) throw new Error(`no invoice ${number}`);
  return found;
};

describe('how the pages of the sample day look', () => {
  test.each(['KX4D', 'M2WB', 'P9HC', 'ZV3E'])('the handover sheet of %s', async (code) => {
    await holds(await sheetOf(code), `handover-${code}`);
  });

  test.each(['INV-0001', 'INV-0002', 'INV-0003', 'INV-0004'])('the invoice %s', async (number) => {
    await holds((await typesetInvoice(day.book, invoiceOf(number))).pdf, number);
  });

  test('a credit note', async () => {
    const credit = makeCreditNote({
      invoice: invoiceOf('INV-0001'),
      lines: [{ number: 2 }],
      number: 'CRN-0001',
      issued: '2026-11-26',
      because: 'waiting was not agreed',
      earlier: [],
    });
    await holds((await typesetInvoice(day.book, credit)).pdf, 'CRN-0001');
  });

  test('one other digit on a page is seen', async () => {
    const [page] = drawn(await sheetOf('KX4D', (text) => text.replace('48211', '98211')), 'changed');
    if (page === undefined) throw new Error('no page');
    expect(await difference(path.join(folder, 'handover-KX4D-1.png'), page)).toBeGreaterThan(0);
  });

  test('one other word on a page is more than the tolerance', async () => {
    const [page] = drawn(
      await sheetOf('KX4D', (text) => text.replaceAll('rear dome light', 'front left horn')),
      'changed',
    );
    if (page === undefined) throw new Error('no page');
    expect(await difference(path.join(folder, 'handover-KX4D-1.png'), page)).toBeGreaterThan(2 * shareTolerance);
  });
});
