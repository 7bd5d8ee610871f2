import { cpSync, mkdirSync, mkdtempSync, readdirSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import fc from 'fast-check';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { Problem } from '../../src/problem.ts';
import type { Job } from '../../src/records/job.ts';
import { readJob } from '../../src/storage/jobs.ts';
import { type OpenBook, openBook } from '../../src/storage/open-book.ts';
import { photographFiles, readPhotographs } from '../../src/storage/photographs.ts';

const id = '2026-11-24-KX4D';
const root = mkdtempSync(path.join(tmpdir(), 'keyout-photographs-'));
let open: OpenBook;
let folder: string;
afterAll(() => rmSync(root, { recursive: true, force: true }));
beforeAll(() => {
  cpSync(path.resolve(import.meta.dirname, '../../sample-jobs'), root, { recursive: true });
  open = openBook(root);
  folder = path.join(root, 'photos', id);
  mkdirSync(folder, { recursive: true });
});

function jobWith(...files: string[]): Job {
  return { ...readJob(open, id), photographs: files.map((file) => ({ file, shows: 'joint' as const })) };
}
const red = { r: 220, g: 20, b: 20 };
const blue = { r: 20, g: 20, b: 220 };

/** A picture whose left half is red and whose right half is blue, before any turning. */
async function halves(width: number, height: number) {
  const left = await sharp({ create: { width: width / 2, height, channels: 3, background: red } })
    .png()
    .toBuffer();
  return sharp({ create: { width, height, channels: 3, background: blue } }).composite([
    { input: left, left: 0, top: 0 },
  ]);
}
async function colourAt(bytes: Uint8Array, x: number, y: number): Promise<string> {
  const { data } = await sharp(bytes)
    .extract({ left: x, top: y, width: 1, height: 1 })
    .raw()
    .toBuffer({ resolveWithObject: true });
  return (data[0] ?? 0) > 150 && (data[2] ?? 0) < 90
    ? 'red'
    : (data[2] ?? 0) > 150 && (data[0] ?? 0) < 90
      ? 'blue'
      : [...data].join();
}
async function only(job: Job) {
  const [photograph, ...more] = await readPhotographs(open, job);
  if (photograph === undefined || more.length > 0) throw new Error('expected one photograph');
  return photograph;
}
async function problemOf(job: Job): Promise<Problem> {
  return readPhotographs(open, job).then(
    () => expect.unreachable('the photograph was read'),
    (error: unknown) => {
      expect(error).toBeInstanceOf(Problem);
      return error as Problem;
    },
  );
}

describe('a photograph made ready for print', () => {
  test('is turned upright, scaled to 1600 pixels, and carries neither place nor maker nor time', async () => {
    const picture = await halves(2400, 1200);
    writeFileSync(
      path.join(folder, 'joint.jpg'),
      await picture
        .withExif({
          IFD0: { Make: 'Sample maker', DateTime: '2026:11:24 08:10:00' },
          IFD3: {
            GPSLatitudeRef: 'N',
            GPSLatitude: '39/1 30/1 0/1',
            GPSLongitudeRef: 'W',
            GPSLongitude: '105/1 0/1 0/1',
          },
        })
        .withMetadata({ orientation: 6 })
        .jpeg()
        .toBuffer(),
    );
    const before = await sharp(path.join(folder, 'joint.jpg')).metadata();
    expect(before.orientation).toBe(6);
    expect(before.exif?.toString('latin1')).toContain('Sample maker');
    const photograph = await only(jobWith('joint.jpg'));
    const after = await sharp(photograph.bytes).metadata();
    expect([after.width, after.height, after.format, after.space]).toEqual([800, 1600, 'jpeg', 'srgb']);
    expect([after.orientation, after.exif, after.icc, after.xmp, after.iptc]).toEqual([
      undefined,
      undefined,
      undefined,
      undefined,
      undefined,
    ]);
    expect(Buffer.from(photograph.bytes).toString('latin1')).not.toMatch(/Exif|GPS|Sample maker/);
    // orientation 6: the first column of the file is the top row of the picture (Exif 2.3, tag 274)
    expect(await colourAt(photograph.bytes, 400, 100)).toBe('red');
    expect(await colourAt(photograph.bytes, 400, 1500)).toBe('blue');
  });

  test('keeps its name, and takes what it shows for its caption where none was written', async () => {
    writeFileSync(path.join(folder, 'small.jpg'), await (await halves(60, 40)).jpeg().toBuffer());
    const job = jobWith('small.jpg');
    expect(await only(job)).toMatchObject({ name: 'small.jpg', caption: 'joint' });
    const told = { ...job, photographs: [{ file: 'small.jpg', shows: 'joint' as const, caption: 'Tap at pin 1' }] };
    expect(await only(told)).toMatchObject({ caption: 'Tap at pin 1' });
  });

  test('a small picture is not enlarged', async () => {
    writeFileSync(path.join(folder, 'small.jpg'), await (await halves(60, 40)).jpeg().toBuffer());
    expect(await sharp((await only(jobWith('small.jpg'))).bytes).metadata()).toMatchObject({ width: 60, height: 40 });
  });

  test('a picture in printing colours becomes sRGB', async () => {
    writeFileSync(
      path.join(folder, 'ink.jpg'),
      await (await halves(60, 40)).toColourspace('cmyk').withIccProfile('cmyk').jpeg().toBuffer(),
    );
    expect((await sharp(path.join(folder, 'ink.jpg')).metadata()).space).toBe('cmyk');
    const { bytes } = await only(jobWith('ink.jpg'));
    expect(await sharp(bytes).metadata()).toMatchObject({ space: 'srgb', channels: 3 });
    expect(await colourAt(bytes, 10, 10)).toBe('red');
  });

  test('a see-through PNG is laid on white', async () => {
    writeFileSync(
      path.join(folder, 'clear.png'),
      await sharp({ create: { width: 20, height: 20, channels: 4, background: { r: 0, g: 0, b: 0, alpha: 0 } } })
        .png()
        .toBuffer(),
    );
    expect(await colourAt((await only(jobWith('clear.png'))).bytes, 10, 10)).toBe('255,255,255');
  });

  test('is made once: the kept copy is used again, and another picture under the same name is made anew', async () => {
    writeFileSync(path.join(folder, 'again.jpg'), await (await halves(60, 40)).jpeg().toBuffer());
    const kept = () => readdirSync(path.join(folder, 'printed')).filter((name) => name.startsWith('again-'));
    const first = await only(jobWith('again.jpg'));
    const second = await only(jobWith('again.jpg'));
    expect(Buffer.compare(first.bytes, second.bytes)).toBe(0);
    expect(kept()).toHaveLength(1);
    writeFileSync(path.join(folder, 'again.jpg'), await (await halves(80, 40)).jpeg().toBuffer());
    expect(await sharp((await only(jobWith('again.jpg'))).bytes).metadata()).toMatchObject({ width: 80 });
    expect(kept()).toHaveLength(2);
  });

  test('kept copies are not taken for photographs of the job', async () => {
    writeFileSync(path.join(folder, 'again.jpg'), await (await halves(60, 40)).jpeg().toBuffer());
    await only(jobWith('again.jpg'));
    expect(photographFiles(open, jobWith())).toContain('again.jpg');
    expect(photographFiles(open, jobWith())).not.toContain('printed');
  });
});

describe('a photograph that cannot be printed is named with file and field', () => {
  const cases: readonly (readonly [string, string, () => Promise<Uint8Array> | Uint8Array, RegExp])[] = [
    [
      'cut short',
      'cut.jpg',
      async () => (await (await halves(600, 400)).jpeg().toBuffer()).subarray(0, 1800),
      /damaged/,
    ],
    [
      'a cut PNG',
      'cut.png',
      async () => {
        const whole = await (await halves(600, 400)).png({ compressionLevel: 0 }).toBuffer();
        return whole.subarray(0, Math.floor(whole.length / 2));
      },
      /damaged/,
    ],
    [
      'text under a picture’s name',
      'text.jpg',
      () => Buffer.from('<svg xmlns="http://www.w3.org/2000/svg"/>'),
      /neither a JPEG nor a PNG/,
    ],
    ['empty', 'empty.jpg', () => new Uint8Array(), /neither a JPEG nor a PNG/],
    ['another telephone format', 'heif.jpg', () => Buffer.from('\0\0\0\x18ftypheic\0\0\0\0mif1heic', 'latin1'), /HEIF/],
    ['only a beginning', 'start.jpg', () => Buffer.from([0xff, 0xd8, 0xff, 0xe0]), /damaged/],
    ['more bytes than are read', 'heavy.jpg', () => Buffer.alloc(40_000_001), /40 MB/],
    [
      'more pixels than are read',
      'wide.png',
      () =>
        sharp({ create: { width: 12_100, height: 10_000, channels: 3, background: '#ffffff' } })
          .png()
          .toBuffer(),
      /121 megapixels/,
    ],
  ];
  test.each(cases)('%s', async (_, name, bytes, what) => {
    writeFileSync(path.join(folder, name), await bytes());
    writeFileSync(path.join(folder, 'sound.jpg'), await (await halves(60, 40)).jpeg().toBuffer());
    const problem = await problemOf(jobWith('sound.jpg', name));
    expect(problem.what).toMatch(what);
    expect(problem.where).toContain(name);
    expect(problem.where).toContain(`${id}, photographs[2].file`);
    expect(problem.exitCode).toBe(3);
  });

  test('missing', async () => {
    const problem = await problemOf(jobWith('nowhere.jpg'));
    expect(problem.what).toBe('The file does not exist.');
    expect(problem.where).toContain(`${id}, photographs[1].file`);
  });

  test.each([
    '../2026-11-24-7QTR/x.jpg',
    '/elsewhere/x.jpg',
    '..\\x.jpg',
    'printed/x.jpg',
    '.hidden.jpg',
    'x.jpg\0.png',
  ])('a name that leaves the folder or hides: %j', async (name) => {
    expect((await problemOf(jobWith(name))).what).toMatch(/not the plain name/);
  });

  test('a link to a file elsewhere', async () => {
    const outside = path.join(root, 'outside.jpg');
    writeFileSync(outside, await (await halves(60, 40)).jpeg().toBuffer());
    rmSync(path.join(folder, 'link.jpg'), { force: true });
    symlinkSync(outside, path.join(folder, 'link.jpg'));
    expect((await problemOf(jobWith('link.jpg'))).what).toMatch(/link/);
  });
});

describe('whatever bytes lie under a photograph’s name', () => {
  test('it is printed, or named as damaged', async () => {
    const whole = [
      await (await halves(60, 40))
        .withExif({ IFD0: { Make: 'Sample maker' } })
        .jpeg()
        .toBuffer(),
      await (await halves(60, 40)).png().toBuffer(),
    ];
    const damage = fc.record({
      base: fc.constantFrom(...whole),
      places: fc.array(fc.tuple(fc.nat(2000), fc.nat(255)), { minLength: 1, maxLength: 12 }),
      keep: fc.integer({ min: 4, max: 2000 }),
    });
    await fc.assert(
      fc.asyncProperty(damage, async ({ base, places, keep }) => {
        const bytes = Buffer.from(base.subarray(0, keep));
        for (const [place, value] of places) if (place >= 8) bytes[place % bytes.length] = value;
        writeFileSync(path.join(folder, 'any.jpg'), bytes);
        const printed = await readPhotographs(open, jobWith('any.jpg')).catch((error: unknown) => error);
        if (printed instanceof Problem) return printed.where.includes('any.jpg');
        const [photograph] = printed as Awaited<ReturnType<typeof readPhotographs>>;
        return (await sharp(photograph?.bytes).metadata()).format === 'jpeg';
      }),
      { numRuns: 200 },
    );
  });
});
