// Unicode's control and format characters: marks of direction, joiners, soft hyphens, variation selectors and control characters: nothing of them can be seen on paper
const unseen = /[\p{Cc}\p{Cf}\p{Variation_Selector}\p{Noncharacter_Code_Point}]/gu;

/**
 * Text as it is set: composed (NFC), without characters that paper cannot show, letters that share a glyph written one way, white space folded.
 * @param text any text
 */
export function cleanText(text: string): string {
  return text
    .replace(/\ufb01/g, 'fi')
    .replace(/\ufb02/g, 'fl')
    .replace(/[ \t\r\n\u2028\u2029]+/g, ' ')
    .replace(unseen, '')
    .normalize('NFC');
}
