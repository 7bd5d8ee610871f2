import { type TagNode, tagsIn } from '../markup/document-tree.ts';
import type { Block } from './block.ts';
import { millimetre } from './grid.ts';
import type { Setting } from './setting.ts';
import { sideBySide } from './side-by-side.ts';
import { numbersIn, spaceBefore } from './style-of.ts';

/**
 * Columns beside each other, in shares of the width.
 * @param node the columns
 * @param width points
 * @param setting what lays out the blocks inside
 * @throws Problem for widths that are not one above nought for each column
 */
export function layOutColumns(node: TagNode, width: number, setting: Setting): readonly Block[] {
  const parts = tagsIn(node.children);
  const shares = numbersIn(node.attributes.widths) ?? parts.map(() => 1);
  if (shares.length !== parts.length || shares.some((share) => share <= 0))
    throw setting.problem(
      `There are ${parts.length} columns, but widths="${node.attributes.widths}".`,
      node,
      'Give each column a width above nought.',
    );
  const gap = Number(node.attributes.gap ?? 5) * millimetre;
  const free = width - gap * (parts.length - 1);
  const sum = shares.reduce((all, each) => all + each, 0);
  let x = 0;
  const strips = parts.map((part, index) => {
    const own = (free * (shares[index] ?? 1)) / sum;
    const strip = { x, blocks: setting.layOutInside(part.children, own, setting) };
    x += own + gap;
    return strip;
  });
  return sideBySide(strips, setting.room).map((each, index) =>
    index === 0 ? { ...each, spaceBefore: spaceBefore(node) } : each,
  );
}
