import { type PDFContext, PDFHexString, type PDFRef, PDFString } from 'pdf-lib';
import { foldedHash } from '../fonts/folded-hash.ts';
import type { ParsedFont } from '../fonts/parse-font.ts';
import { digits } from './digits.ts';

/** A font while a document is drawn: it gives each glyph that is used its number, and is embedded at the end. */
export type FontInUse = {
  /** the operand of a TJ operator: glyphs in hexadecimal, kerning between them */
  readonly show: (text: string) => string;
  readonly embed: (context: PDFContext) => PDFRef;
};

type UsedGlyph = { readonly id: number; readonly own: number; readonly text: string };

/**
 * A font that learns which of its glyphs a document uses, and embeds only those.
 * @param font the parsed font
 */
export function fontInUse(font: ParsedFont): FontInUse {
  const subset = font.createSubset();
  const used = new Map<number, UsedGlyph>();
  const perThousand = 1000 / font.unitsPerEm;
  const show = (text: string) => {
    let codes = '';
    let operand = '[';
    // a number in TJ moves back, in thousandths of the type size
    const move = (back: number) => {
      if (back === 0) return;
      operand += `${codes === '' ? '' : `<${codes}>`}${digits(back * perThousand)} `;
      codes = '';
    };
    for (const { glyph, step, own, shift, text: character } of font.shape(text)) {
      const known = used.get(glyph) ?? { id: subset.includeGlyph(glyph), own: own * perThousand, text: character };
      used.set(glyph, known);
      move(-shift);
      codes += known.id.toString(16).padStart(4, '0');
      move(own - step + shift);
    }
    return `${operand}${codes === '' ? '' : `<${codes}>`}]`;
  };
  return {
    show,
    embed: (context) =>
      embed(
        context,
        font,
        subset.encode(),
        [...used.values()].toSorted((one, other) => one.id - other.id),
      ),
  };
}

function embed(context: PDFContext, font: ParsedFont, file: Uint8Array, glyphs: readonly UsedGlyph[]): PDFRef {
  // ISO 32000-1, 9.6.4: six capitals that tell one subset from another
  const name = `${letters(foldedHash(glyphs.map((each) => each.text).join('')))}+${font.postscriptName}`;
  const scale = 1000 / font.unitsPerEm;
  const { minX, minY, maxX, maxY } = font.bbox;
  const descriptor = context.register(
    context.obj({
      Type: 'FontDescriptor',
      FontName: name,
      // symbolic: its glyphs are reached by number, not by a named encoding
      Flags: 4,
      FontBBox: [minX, minY, maxX, maxY].map((each) => Math.round(each * scale)),
      ItalicAngle: font.italicAngle,
      Ascent: Math.round(font.ascent * scale),
      Descent: Math.round(font.descent * scale),
      CapHeight: Math.round((font.capHeight ?? font.ascent) * scale),
      StemV: 80,
      FontFile2: context.register(context.flateStream(file, { Length1: file.length })),
    }),
  );
  const descendant = context.register(
    context.obj({
      Type: 'Font',
      Subtype: 'CIDFontType2',
      BaseFont: name,
      CIDToGIDMap: 'Identity',
      CIDSystemInfo: { Registry: PDFString.of('Adobe'), Ordering: PDFString.of('Identity'), Supplement: 0 },
      FontDescriptor: descriptor,
      DW: 0,
      W: glyphs.flatMap((each) => [each.id, [Number(digits(each.own))]]),
    }),
  );
  return context.register(
    context.obj({
      Type: 'Font',
      Subtype: 'Type0',
      BaseFont: name,
      Encoding: 'Identity-H',
      DescendantFonts: [descendant],
      ToUnicode: context.register(context.flateStream(toUnicode(glyphs))),
    }),
  );
}

function letters(hash: string): string {
  return [...hash.slice(0, 6)].map((each) => String.fromCharCode(65 + Number.parseInt(each, 16))).join('');
}

// the letters that a copied glyph becomes: ISO 32000-1, 9.10.3
function toUnicode(glyphs: readonly UsedGlyph[]): string {
  const rows = glyphs.map(
    (each) =>
      `<${each.id.toString(16).padStart(4, '0')}> ${PDFHexString.fromText(each.text)
        .toString()
        .replace(/^<feff/i, '<')}`,
  );
  const parts: string[] = [];
  for (let from = 0; from < rows.length; from += 100) {
    const some = rows.slice(from, from + 100);
    parts.push(`${some.length} beginbfchar`, ...some, 'endbfchar');
  }
  return [
    '/CIDInit /ProcSet findresource begin',
    '12 dict begin',
    'begincmap',
    '/CIDSystemInfo << /Registry (Adobe) /Ordering (UCS) /Supplement 0 >> def',
    '/CMapName /Adobe-Identity-UCS def',
    '/CMapType 2 def',
    '1 begincodespacerange',
    '<0000> <FFFF>',
    'endcodespacerange',
    ...parts,
    'endcmap',
    'CMapName currentdict /CMap defineresource pop',
    'end',
    'end',
  ].join('\n');
}
