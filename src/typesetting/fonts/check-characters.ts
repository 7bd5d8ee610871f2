import { Problem } from '../../problem.ts';
import { cleanText } from '../markup/clean-text.ts';
import { type TagNode, tagsIn } from '../markup/document-tree.ts';
import type { Metrics } from './font-metrics.ts';

// Hebrew, Arabic, Syriac, Thaana, N'Ko and their presentation forms (Unicode, bidirectional classes R and AL)
const rightToLeft = /[\u0590-\u08ff\ufb1d-\ufdcf\ufdf0-\ufdff\ufe70-\ufefc]|[\u{10800}-\u{10fff}\u{1e800}-\u{1efff}]/u;
const printedAttributes = ['name', 'label'] as const;

/**
 * Stops a document that holds a character no font can show, before anything is laid out: never a box in its place.
 * @param document the tree
 * @param metrics the fonts
 * @param template the template's name, for the message
 * @throws Problem naming the character, its text and the template’s line
 */
export function checkCharacters(document: TagNode, metrics: Metrics, template: string): void {
  const seen = new Set<string>();
  const check = (text: string, node: TagNode) => {
    for (const character of cleanText(text)) {
      if (seen.has(character)) continue;
      if (rightToLeft.test(character) || !metrics.has(character, 'sans'))
        throw unshown(character, text, node, template);
      seen.add(character);
    }
  };
  const visit = (node: TagNode): void => {
    for (const attribute of printedAttributes) check(node.attributes[attribute] ?? '', node);
    for (const child of node.children) if ('text' in child) check(child.text, node);
    for (const child of tagsIn(node.children)) visit(child);
  };
  visit(document);
}

function unshown(character: string, text: string, node: TagNode, template: string): Problem {
  const code = `U+${(character.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}`;
  return new Problem(
    rightToLeft.test(character)
      ? `The character "${character}" (${code}) is written from right to left, which these documents cannot show.`
      : `The character "${character}" (${code}) is in none of the document's fonts.`,
    `${template}, line ${node.line}, <${node.tag}>: "${text.trim().slice(0, 80)}"`,
    'Write it in Latin, Greek or Cyrillic letters.',
  );
}
