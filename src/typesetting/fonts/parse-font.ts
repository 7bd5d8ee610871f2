import * as fontkit from 'fontkit';

/** One glyph of shaped text, in font units: the step to the next one (kerning included), its own width, and how far it is moved sideways. */
export type ShapedGlyph = {
  readonly glyph: number;
  readonly step: number;
  readonly own: number;
  readonly shift: number;
  readonly text: string;
};

/** What is used of fontkit's font. */
type FontkitFont = {
  readonly unitsPerEm: number;
  readonly ascent: number;
  readonly descent: number;
  readonly capHeight: number | undefined;
  readonly italicAngle: number;
  readonly postscriptName: string;
  readonly bbox: { readonly minX: number; readonly minY: number; readonly maxX: number; readonly maxY: number };
  readonly layout: (
    text: string,
    features: Readonly<Record<string, boolean>>,
  ) => {
    readonly glyphs: readonly { readonly id: number; readonly advanceWidth: number }[];
    readonly positions: readonly { readonly xAdvance: number; readonly xOffset: number }[];
  };
  readonly hasGlyphForCodePoint: (codePoint: number) => boolean;
  readonly glyphForCodePoint: (codePoint: number) => { readonly id: number; readonly advanceWidth: number };
  readonly createSubset: () => { includeGlyph: (glyph: number) => number; encode: () => Uint8Array };
};
export type ParsedFont = Omit<FontkitFont, 'layout' | 'glyphForCodePoint'> & {
  /** glyphs of a text, word by word, so that the same words are measured and drawn */
  readonly shape: (text: string) => readonly ShapedGlyph[];
  /** width in font units */
  readonly width: (text: string) => number;
};

type Word = { readonly glyphs: readonly ShapedGlyph[]; readonly width: number };
// letters stay letters: a glyph for two letters would be copied as one
const features = { liga: false, clig: false, dlig: false, calt: false };
const rememberedWordsMax = 2_000;
const rememberedPairsMax = 20_000;
const parsed = new WeakMap<Uint8Array, ParsedFont>();

/**
 * A font made ready for measuring and drawing; the same bytes are parsed once and then remembered.
 * Glyphs' texts are kept here and not read from the parser's own cache, which remembers the letters of the first document that used them.
 * @param bytes a TrueType font
 */
export function parseFont(bytes: Uint8Array): ParsedFont {
  const known = parsed.get(bytes);
  if (known !== undefined) return known;
  const font = fontkit.create(bytes) as FontkitFont;
  const words = new Map<string, Word>();
  const kerning = new Map<string, number>();
  const word = (text: string): Word => {
    const remembered = words.get(text);
    if (remembered !== undefined) return remembered;
    if (words.size >= rememberedWordsMax) words.clear();
    const glyphs = /\p{M}/u.test(text) ? shapeWithAccents(font, text) : shapeByPairs(font, text, kerning);
    const shaped = { glyphs, width: glyphs.reduce((sum, each) => sum + each.step, 0) };
    words.set(text, shaped);
    return shaped;
  };
  const ready: ParsedFont = {
    unitsPerEm: font.unitsPerEm,
    ascent: font.ascent,
    descent: font.descent,
    capHeight: font.capHeight,
    italicAngle: font.italicAngle,
    postscriptName: font.postscriptName,
    bbox: font.bbox,
    hasGlyphForCodePoint: (codePoint) => font.hasGlyphForCodePoint(codePoint),
    createSubset: () => font.createSubset(),
    shape: (text) => wordsOf(text).flatMap((each) => word(each).glyphs),
    width: (text) => wordsOf(text).reduce((sum, each) => sum + word(each).width, 0),
  };
  parsed.set(bytes, ready);
  return ready;
}

function wordsOf(text: string): readonly string[] {
  return text.match(/[^ ]+| +/g) ?? [];
}

// without accents that stand apart, a font only draws neighbours nearer or further: each pair is asked for once
function shapeByPairs(font: FontkitFont, text: string, kerning: Map<string, number>): readonly ShapedGlyph[] {
  const characters = [...text];
  return characters.map((character, index) => {
    const { id, advanceWidth } = font.glyphForCodePoint(character.codePointAt(0) ?? 0);
    const next = characters[index + 1];
    const nearer = next === undefined ? 0 : kerningOf(font, character + next, advanceWidth, kerning);
    return { glyph: id, step: advanceWidth + nearer, own: advanceWidth, shift: 0, text: character };
  });
}

function kerningOf(font: FontkitFont, pair: string, advance: number, kerning: Map<string, number>): number {
  const known = kerning.get(pair);
  if (known !== undefined) return known;
  if (kerning.size >= rememberedPairsMax) kerning.clear();
  const run = font.layout(pair, features);
  const nearer = run.glyphs.length === 2 ? (run.positions[0]?.xAdvance ?? advance) - advance : 0;
  kerning.set(pair, nearer);
  return nearer;
}

function shapeWithAccents(font: FontkitFont, text: string): readonly ShapedGlyph[] {
  const characters = [...text];
  const run = font.layout(text, features);
  // where a font joins or parts characters, each character is drawn by itself
  if (run.glyphs.length !== characters.length) return shapeByPairs(font, text, new Map());
  return characters.map((character, index) => {
    const glyph = run.glyphs[index];
    const position = run.positions[index];
    const own = glyph?.advanceWidth ?? 0;
    return {
      glyph: glyph?.id ?? 0,
      step: position?.xAdvance ?? own,
      own,
      shift: position?.xOffset ?? 0,
      text: character,
    };
  });
}
