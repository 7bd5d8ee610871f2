import { type TreeNode, tagsIn } from '../markup/document-tree.ts';
import { type BlockTag, isBlockTag } from '../markup/tag-set.ts';
import { type Block, block } from './block.ts';
import { baseline } from './grid.ts';
import { layOutColumns } from './lay-out-columns.ts';
import { layOutFacts } from './lay-out-facts.ts';
import { layOutFigure } from './lay-out-figure.ts';
import { layOutImage } from './lay-out-image.ts';
import { layOutKeep } from './lay-out-keep.ts';
import { layOutList } from './lay-out-list.ts';
import { layOutParagraph } from './lay-out-paragraph.ts';
import { layOutRule } from './lay-out-rule.ts';
import { layOutSignature } from './lay-out-signature.ts';
import { layOutTable } from './lay-out-table.ts';
import type { LayOutTag, Setting } from './setting.ts';

/** What lays out each tag that stands as a block: a tag added to the set is not done until it has its line here. */
const layOutTag: Readonly<Record<BlockTag, LayOutTag>> = {
  h1: layOutParagraph,
  h2: layOutParagraph,
  h3: layOutParagraph,
  p: layOutParagraph,
  columns: layOutColumns,
  table: layOutTable,
  list: layOutList,
  facts: layOutFacts,
  keep: layOutKeep,
  rule: (node, width, setting) => [layOutRule(node, width, setting)],
  space: (node) => [
    block({ height: Number(node.attributes.lines ?? 1) * baseline, marks: [], blank: true, hold: 'firmly' }),
  ],
  'page-break': () => [block({ height: 0, marks: [], pageBreak: true })],
  figure: (node, width, setting) => [layOutFigure(node, width, setting)],
  image: (node, width, setting) => [layOutImage(node, width, setting)],
  'signature-field': (node, width, setting) => [layOutSignature(node, width, setting)],
};

/**
 * The blocks of some nodes, set to a width.
 * @param nodes children of a document, column, cell or keep
 * @param width points
 * @param setting widths of text, accent colour, structure
 * @throws Problem for a tag that is no block, an image that is missing or cannot be read, or a table row with too many cells
 */
export function layOutBlocks(nodes: readonly TreeNode[], width: number, setting: Setting): readonly Block[] {
  return tagsIn(nodes).flatMap((node) => {
    const { tag } = node;
    if (!isBlockTag(tag))
      throw setting.problem(
        `The tag <${tag}> does not stand by itself.`,
        node,
        'Look it up in the list of tags in TEMPLATES.md.',
      );
    return layOutTag[tag](node, width, setting);
  });
}
