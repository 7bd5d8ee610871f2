import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';

type DocumentFonts = Readonly<Record<'sans' | 'sansBold' | 'condensed' | 'condensedBold' | 'mono', Uint8Array>>;
let remembered: DocumentFonts | null = null;

/** The bytes of the five fonts that documents are set in, read once a process: the same bytes are then parsed once. */
export function readFonts(): DocumentFonts {
  remembered ??= readFromPackage();
  return remembered;
}

function readFromPackage(): DocumentFonts {
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
