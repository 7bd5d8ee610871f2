import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';

/** The bytes of the five fonts that documents are set in. */
export function readFonts() {
  const folder = path.join(
    path.dirname(createRequire(import.meta.url).resolve('dejavu-fonts-ttf/package.json')),
    'ttf',
  );
  const read = (name: string): Uint8Array => readFileSync(path.join(folder, `${name}.ttf`));
  return {
    sans: read('DejaVuSans'),
    sansBold: read('DejaVuSans-Bold'),
    condensed: read('DejaVuSansCondensed'),
    condensedBold: read('DejaVuSansCondensed-Bold'),
    mono: read('DejaVuSansMono'),
  };
}
