import type { TagNode } from '../markup/document-tree.ts';
import { type Block, block } from './block.ts';
import type { Setting } from './setting.ts';
import { spaceBefore } from './style-of.ts';

/**
 * A line across the whole width.
 * @param node the rule
 * @param width points
 * @param setting accent colour
 */
export function layOutRule(node: TagNode, width: number, setting: Setting): Block {
  const weight = Number(node.attributes.weight ?? 0.4);
  const colour = node.attributes.colour === 'accent' ? setting.accent : '#000000';
  return block({
    height: 3,
    spaceBefore: spaceBefore(node),
    hold: 'firmly',
    marks: [{ kind: 'line', x: 0, y: 1.5, toX: width, toY: 1.5, weight, colour, element: 'layout' }],
  });
}
