import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { readFonts } from '../../src/storage/fonts.ts';
import { typeset } from '../../src/typesetting/typeset.ts';

/** A view printed with its own template. */
export async function printed(templateName: 'handover' | 'invoice', view: { readonly language: string }) {
  const file = path.resolve(import.meta.dirname, `../../templates/${templateName}.hbs`);
  return typeset({
    template: readFileSync(file, 'utf8'),
    templateName: file,
    partials: {},
    view,
    fonts: await readFonts(),
    language: view.language,
    title: templateName,
    author: 'Example fitting',
    created: '2026-11-24',
    identity: 'ab'.repeat(32),
  });
}

/** A word where an independent reader finds it, in points from the upper left corner. */
export type Word = {
  readonly page: number;
  readonly text: string;
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
};

/** The words of a PDF with their places, and the size of its pages, as pdftotext reads them. */
export function wordsOf(pdf: Uint8Array): {
  readonly words: readonly Word[];
  readonly width: number;
  readonly height: number;
} {
  const folder = mkdtempSync(path.join(tmpdir(), 'keyout-words-'));
  try {
    const file = path.join(folder, 'a.pdf');
    writeFileSync(file, pdf);
    const html = spawnSync('pdftotext', ['-bbox', file, '-'], { encoding: 'utf8', maxBuffer: 1e8 }).stdout;
    const pages = html.split('<page ').slice(1);
    const size = /width="([\d.]+)" height="([\d.]+)"/.exec(pages[0] ?? '');
    const word = /<word xMin="([\d.-]+)" yMin="([\d.-]+)" xMax="([\d.-]+)" yMax="([\d.-]+)">([^<]*)</g;
    const words = pages.flatMap((text, page) =>
      [...text.matchAll(word)].map((found) => ({
        page: page + 1,
        text: found[5] ?? '',
        left: Number(found[1]),
        top: Number(found[2]),
        right: Number(found[3]),
        bottom: Number(found[4]),
      })),
    );
    return { words, width: Number(size?.[1]), height: Number(size?.[2]) };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
