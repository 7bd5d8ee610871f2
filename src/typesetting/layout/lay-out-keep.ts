import type { TagNode } from '../markup/document-tree.ts';
import type { Block } from './block.ts';
import type { Setting } from './setting.ts';

/**
 * Blocks that stay on one page where it has room for them.
 * @param node the keep
 * @param width points
 * @param setting what lays out the blocks inside
 */
export function layOutKeep(node: TagNode, width: number, setting: Setting): readonly Block[] {
  const blocks = setting.layOutInside(node.children, width, setting);
  return blocks.map((each, index) => ({
    ...each,
    ...(index < blocks.length - 1 && each.hold === 'no' ? { hold: 'loosely' as const } : {}),
    ...(index === 0 && node.attributes['with-previous'] === 'yes' ? { holdsPrevious: true } : {}),
  }));
}
