import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';
import { wordsIn } from '../words/words-in.ts';
import type { SigningSheet } from './signing-sheet.ts';

const folder = new URL('../../templates/signing-page/', import.meta.url);

function drawingLibrary(): string {
  const main = createRequire(import.meta.url).resolve('signature_pad');
  const text = readFileSync(path.join(path.dirname(main), 'signature_pad.umd.min.js'), 'utf8');
  // the map is a file that this page cannot have
  return text.replace(/^\/\/# sourceMappingURL=.*$/m, '');
}

/**
 * What draws the signing page: style and scripts stand in the page itself, so that it needs no other file.
 * @param sheet what the customer reads
 * @returns from a nonce (the page's own word for its style and scripts) to the page's HTML
 */
export async function signingPage(sheet: SigningSheet): Promise<(nonce: string) => string> {
  const { default: Handlebars } = await import('handlebars');
  const file = (name: string) => readFileSync(new URL(name, folder), 'utf8');
  const trusted = (text: string) => new Handlebars.SafeString(text);
  const fill = Handlebars.create().compile(file('page.hbs'), { strict: true });
  const fixed = {
    sheet,
    words: wordsIn(sheet.language).page,
    style: trusted(file('page.css')),
    pad: trusted(drawingLibrary()),
    script: trusted(file('page.js')),
  };
  return (nonce) => fill({ ...fixed, nonce });
}
