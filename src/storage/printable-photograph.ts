import { Problem } from '../problem.ts';

/** Longest side on paper: 1600 pixels are 254 dots an inch over a full text width of 160 mm. */
const longestSidePixels = 1600;
const megapixelsMax = 120;
const jpegQuality = 82;

function formatOf(bytes: Uint8Array): 'JPEG' | 'PNG' | 'HEIF' | null {
  const start = Buffer.from(bytes.subarray(0, 12)).toString('latin1');
  if (start.startsWith('\xff\xd8\xff')) return 'JPEG';
  if (start.startsWith('\x89PNG\r\n\x1a\n')) return 'PNG';
  return start.slice(4, 8) === 'ftyp' ? 'HEIF' : null;
}

/**
 * A photograph made ready for print: upright, sRGB, on white, at most 1600 pixels on its longest side, with neither
 * place nor any other private data.
 * @param original bytes of a JPEG or PNG file as the telephone wrote it
 * @param name the file's name
 * @param field where the job names it
 * @returns JPEG bytes
 * @throws Problem when it is no JPEG or PNG, is damaged, or has too many pixels
 */
export async function printablePhotograph(original: Uint8Array, name: string, field: string): Promise<Uint8Array> {
  const where = `${name} (${field})`;
  const format = formatOf(original);
  if (format !== 'JPEG' && format !== 'PNG')
    throw new Problem(
      format === 'HEIF' ? 'The photograph is in the HEIF format.' : 'The file is neither a JPEG nor a PNG picture.',
      where,
      'Export it as JPEG from the telephone and put that file in its place.',
    );
  const { default: sharp } = await import('sharp');
  const damaged = (error: unknown) =>
    new Problem(
      `The photograph is damaged and cannot be read (${error instanceof Error ? (error.message.split('\n')[0] ?? '') : String(error)}).`,
      where,
      'Copy it again from the telephone, or take it off the record.',
    );
  const { width, height } = await sharp(original, { limitInputPixels: false })
    .metadata()
    .catch((error: unknown) => {
      throw damaged(error);
    });
  if (width * height > megapixelsMax * 1_000_000)
    throw new Problem(
      `The photograph has ${Math.round((width * height) / 1_000_000)} megapixels; at most ${megapixelsMax} are read.`,
      where,
      'Save it smaller, or take another one.',
    );
  return sharp(original, { failOn: 'error', limitInputPixels: megapixelsMax * 1_000_000 })
    .autoOrient()
    .resize({ width: longestSidePixels, height: longestSidePixels, fit: 'inside', withoutEnlargement: true })
    .flatten({ background: '#ffffff' })
    .toColourspace('srgb')
    .jpeg({ quality: jpegQuality })
    .toBuffer()
    .catch((error: unknown) => {
      throw damaged(error);
    });
}
