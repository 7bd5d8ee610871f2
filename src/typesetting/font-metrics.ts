import { Problem } from '../problem.ts';
import type { Face } from './page.ts';

/** What layout needs to know of a font: fontkit's part that is used. */
export type MeasuredFont = {
  readonly unitsPerEm: number;
  layout: (text: string) => { readonly glyphs: readonly { readonly advanceWidth: number }[] };
  hasGlyphForCodePoint: (codePoint: number) => boolean;
};
export type Metrics = { readonly width: (text: string, face: Face, size: number) => number };

/**
 * Widths of text, remembered word by word; a sign that no font has is an error, never a box.
 * @param fonts the five fonts
 * @throws Problem naming the sign and the text it stands in
 */
export function fontMetrics(fonts: Readonly<Record<Face, MeasuredFont>>): Metrics {
  const known = new Map<string, number>();
  return {
    width: (text, face, size) => {
      const key = `${face} ${text}`;
      const remembered = known.get(key);
      if (remembered !== undefined) return remembered * size;
      const font = fonts[face];
      for (const sign of text) {
        if (!font.hasGlyphForCodePoint(sign.codePointAt(0) ?? 0)) {
          throw new Problem(
            `The sign "${sign}" (U+${(sign.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}) is in none of the document's fonts.`,
            `the text "${text}"`,
            'Write it in Latin, Greek or Cyrillic letters.',
          );
        }
      }
      const width = font.layout(text).glyphs.reduce((sum, glyph) => sum + glyph.advanceWidth, 0) / font.unitsPerEm;
      known.set(key, width);
      return width * size;
    },
  };
}
