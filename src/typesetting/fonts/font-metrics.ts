import type { Face } from './faces.ts';
import type { ParsedFont } from './parse-font.ts';

export type Fonts = Readonly<Record<Face, ParsedFont>>;
/** What layout needs to know of the fonts. */
export type Metrics = {
  /** points */
  readonly width: (text: string, face: Face, size: number) => number;
  readonly has: (character: string, face: Face) => boolean;
};

/**
 * Widths of text, kerning included: exactly what is drawn.
 * @param fonts the five fonts
 */
export function fontMetrics(fonts: Fonts): Metrics {
  return {
    width: (text, face, size) => (fonts[face].width(text) / fonts[face].unitsPerEm) * size,
    has: (character, face) => fonts[face].hasGlyphForCodePoint(character.codePointAt(0) ?? 0),
  };
}
