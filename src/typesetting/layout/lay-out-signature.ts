import type { TagNode } from '../markup/document-tree.ts';
import { type Block, block, stacked } from './block.ts';
import { millimetre, sizes } from './grid.ts';
import { layOutText } from './lay-out-text.ts';
import { moved } from './page.ts';
import type { Setting } from './setting.ts';

/**
 * A line to sign on, its label below, and over it the field in which a viewer can sign.
 * @param node the signature field
 * @param width points
 * @param setting widths of text, structure
 */
export function layOutSignature(node: TagNode, width: number, setting: Setting): Block {
  const length = Math.min(width, Number(node.attributes.width ?? 80) * millimetre);
  const height = Number(node.attributes.height ?? 12) * millimetre;
  const label = node.attributes.label ?? '';
  const lines = layOutText(
    [{ text: label }],
    length,
    { face: 'condensed', ...sizes.note, align: 'left', element: setting.placeOf(node, 'label') },
    setting,
  );
  const text = stacked(lines.map((line) => block(line)));
  return block({
    height: height + 1 + text.height,
    marks: [
      ...text.marks.map((mark) => moved(mark, 0, height + 1)),
      { kind: 'line', x: 0, y: height, toX: length, toY: height, weight: 0.4, colour: '#000000', element: 'layout' },
      {
        kind: 'field',
        x: 0,
        y: 0,
        width: length,
        height,
        name: node.attributes.name ?? '',
        label,
        element: setting.placeOf(node),
      },
    ],
  });
}
