import { spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import sharp from 'sharp';
import { afterAll, describe, expect, test } from 'vitest';
import { draftInvoice } from '../../src/operations/draft-invoice.ts';
import { examineJob } from '../../src/operations/examine-job.ts';
import { renderHandover } from '../../src/operations/render-handover.ts';
import { renderInvoice } from '../../src/operations/render-invoice.ts';
import { readJob } from '../../src/storage/jobs.ts';
import { readLogo } from '../../src/storage/logo.ts';
import { type OpenBook, openBook } from '../../src/storage/open-book.ts';

const id = '2026-11-24-KX4D';
const root = mkdtempSync(path.join(tmpdir(), 'keyout-pictures-'));
afterAll(() => rmSync(root, { recursive: true, force: true }));

function sampleBook(logo?: string): OpenBook {
  const folder = mkdtempSync(path.join(root, 'book-'));
  cpSync(path.resolve(import.meta.dirname, '../../sample-jobs'), folder, { recursive: true });
  mkdirSync(path.join(folder, 'photos', id), { recursive: true });
  const open = openBook(folder);
  return logo === undefined ? open : { ...open, book: { ...open.book, business: { ...open.book.business, logo } } };
}
const plain = (width: number, height: number) =>
  sharp({ create: { width, height, channels: 3, background: '#3366aa' } });

async function sheetWith(open: OpenBook, count: number) {
  const photographs = Array.from({ length: count }, (_, index) => ({
    file: `p${index + 1}.jpg`,
    shows: 'joint' as const,
    caption: `Picture number ${index + 1}`,
  }));
  for (const [index, { file }] of photographs.entries()) {
    const telephone = plain(900 + index, 600).withExif({
      IFD0: { Make: 'Sample maker' },
      IFD3: { GPSLatitudeRef: 'N', GPSLatitude: '39/1 30/1 0/1' },
    });
    writeFileSync(path.join(open.folder, 'photos', id, file), await telephone.jpeg().toBuffer());
  }
  const job = { ...readJob(open, id), photographs };
  return (await renderHandover(open, await examineJob(open, job))).pdf;
}
function inspect(pdf: Uint8Array, tool: string, ...words: string[]): string {
  const file = path.join(root, 'inspected.pdf');
  writeFileSync(file, pdf);
  return spawnSync(
    tool,
    words.map((word) => (word === 'FILE' ? file : word)),
    { encoding: 'utf8' },
  ).stdout;
}

describe('pictures on paper', () => {
  test('twenty-four photographs stand on the sheet with their captions, and nothing private is in the file', async () => {
    const pdf = await sheetWith(sampleBook(), 24);
    const images = inspect(pdf, 'pdfimages', '-list', 'FILE')
      .split('\n')
      .filter((line) => / image /.test(line));
    expect(images).toHaveLength(24);
    for (const line of images) expect(line).toMatch(/ (?:rgb|icc) +3 +8 +jpeg /);
    const text = inspect(pdf, 'pdftotext', 'FILE', '-');
    for (let place = 1; place <= 24; place += 1) expect(text).toContain(`Picture number ${place}`);
    expect(Buffer.from(pdf).toString('latin1')).not.toMatch(/Exif|Sample maker|GPS/);
  });

  test('the same photographs print the same bytes', async () => {
    const [one, other] = [await sheetWith(sampleBook(), 2), await sheetWith(sampleBook(), 2)];
    expect(Buffer.compare(one, other)).toBe(0);
  });

  test.each<[string, () => Promise<Uint8Array> | Uint8Array]>([
    ['logo.png', () => plain(300, 100).png().toBuffer()],
    ['logo.jpg', () => plain(3000, 1000).toColourspace('cmyk').withIccProfile('cmyk').jpeg().toBuffer()],
    [
      'logo.svg',
      () => Buffer.from('<svg xmlns="http://www.w3.org/2000/svg" width="60" height="20"><path d="M0 0h60v20z"/></svg>'),
    ],
  ])('the business’s logo stands on both documents: %s', async (name, bytes) => {
    const open = sampleBook(name);
    writeFileSync(path.join(open.folder, name), await bytes());
    expect(await sharp((await readLogo(open)) ?? new Uint8Array()).metadata()).toMatchObject({
      format: 'png',
      space: 'srgb',
      channels: 3,
      height: 220,
    });
    const invoice = await renderInvoice(open, await draftInvoice(open, [readJob(open, id)], '2026-11-24'));
    for (const pdf of [await sheetWith(open, 0), invoice])
      expect(
        inspect(pdf, 'pdfimages', '-list', 'FILE')
          .split('\n')
          .filter((line) => / image /.test(line)),
      ).toHaveLength(1);
  });

  test.each<[string, string | Uint8Array | null, RegExp]>([
    ['missing', null, /does not exist/],
    ['no picture', 'hello', /cannot be read/],
    ['too large', new Uint8Array(5_000_001), /5 MB/],
  ])('a logo that is %s is named with its place in book.json', async (_, bytes, what) => {
    const open = sampleBook('logo.png');
    if (bytes !== null) writeFileSync(path.join(open.folder, 'logo.png'), bytes);
    await expect(readLogo(open)).rejects.toThrow(what);
    await expect(readLogo(open)).rejects.toThrow(/business\.logo/);
  });

  test('a book without a logo has none', async () => {
    expect(await readLogo(sampleBook())).toBeNull();
  });
});
