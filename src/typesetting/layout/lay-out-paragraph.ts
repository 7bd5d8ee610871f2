import type { TagNode } from '../markup/document-tree.ts';
import { type Block, block, type Hold } from './block.ts';
import { layOutText } from './lay-out-text.ts';
import type { Setting } from './setting.ts';
import { spaceBefore, styleOf } from './style-of.ts';

const headingTags = ['h1', 'h2', 'h3'];

/**
 * The lines of a paragraph or a heading.
 * @param node the paragraph
 * @param width points
 * @param setting widths of text, structure
 */
export function layOutParagraph(node: TagNode, width: number, setting: Setting): readonly Block[] {
  const lines = layOutText(node.children, width, styleOf(node, setting.placeOf(node)), setting);
  const holdsNext = headingTags.includes(node.tag) || node.attributes['keep-with-next'] === 'yes';
  const last = lines.length - 1;
  return lines.map((line, index) => {
    // two lines at least stay together at the head and at the foot of a page
    const inside: Hold = headingTags.includes(node.tag) || index === 0 || index === last - 1 ? 'firmly' : 'no';
    return block({
      height: line.height,
      marks: line.marks,
      spaceBefore: index === 0 ? spaceBefore(node) : 0,
      hold: index === last ? (holdsNext ? 'firmly' : 'no') : inside,
    });
  });
}
