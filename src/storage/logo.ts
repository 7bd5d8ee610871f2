import { existsSync, lstatSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { Problem } from '../problem.ts';
import { sha256 } from './digest.ts';
import { fileProblem } from './file-problem.ts';
import type { OpenBook } from './open-book.ts';
import { writeAtomically } from './write-atomically.ts';

const megabytesMax = 5;
/** 45 × 12 mm, as the templates print it, at more than 400 dots an inch. */
const widthPixels = 800;
const heightPixels = 220;

/**
 * The business's logo as documents print it, made ready once and kept in out/; null when it has none.
 * @param open the open book
 * @returns PNG bytes on white, without any data but the picture
 * @throws Problem when the file that book.json names is missing, damaged, too large or no picture
 */
export async function readLogo(open: OpenBook): Promise<Uint8Array | null> {
  const name = open.book.business.logo;
  if (name === undefined) return null;
  const file = path.join(open.folder, name);
  const original = readOriginal(file);
  const kept = path.join(open.folder, 'out', 'printed', `logo-${sha256(original).slice(0, 16)}.png`);
  if (!existsSync(kept)) writeAtomically(kept, await printableLogo(original, where(file)));
  return readFileSync(kept);
}

const where = (file: string) => `${file} (book.json, business.logo)`;

function readOriginal(file: string): Uint8Array {
  try {
    const status = lstatSync(file);
    if (!status.isFile() || status.size > megabytesMax * 1_000_000)
      throw new Problem(
        status.isFile()
          ? `The logo has ${Math.round(status.size / 1_000_000)} MB; at most ${megabytesMax} MB are read.`
          : 'The logo is a link or a folder, not a file.',
        where(file),
        'Put a small PNG, JPEG or SVG file into the book’s folder.',
      );
    return readFileSync(file);
  } catch (error) {
    throw fileProblem(error, where(file));
  }
}

async function printableLogo(original: Uint8Array, place: string): Promise<Uint8Array> {
  const { default: sharp } = await import('sharp');
  try {
    // an SVG is drawn at this density before it is brought to its size
    return await sharp(original, { failOn: 'error', density: 300, limitInputPixels: 40_000_000 })
      .autoOrient()
      .resize({ width: widthPixels, height: heightPixels, fit: 'inside' })
      .flatten({ background: '#ffffff' })
      .toColourspace('srgb')
      .png({ compressionLevel: 9 })
      .toBuffer();
  } catch (error) {
    const said = error instanceof Error ? (error.message.split('\n')[0] ?? '') : String(error);
    throw new Problem(`The logo cannot be read (${said}).`, place, 'Save it anew as PNG, JPEG or SVG.');
  }
}
