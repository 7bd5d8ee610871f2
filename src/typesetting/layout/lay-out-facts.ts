import { type TagNode, tagsIn } from '../markup/document-tree.ts';
import { type Block, block } from './block.ts';
import { baseline, millimetre, sizes } from './grid.ts';
import { layOutText } from './lay-out-text.ts';
import type { Setting } from './setting.ts';
import { sideBySide } from './side-by-side.ts';
import { spaceBefore } from './style-of.ts';

const gap = 5 * millimetre;

/**
 * Named values side by side, the name small above its value.
 * @param node the facts
 * @param width points
 * @param setting widths of text, structure
 */
export function layOutFacts(node: TagNode, width: number, setting: Setting): readonly Block[] {
  const count = Math.max(1, Math.round(Number(node.attributes.columns ?? 1)));
  const own = (width - gap * (count - 1)) / count;
  const cells = tagsIn(node.children).map((fact) => [
    ...layOutText(
      [{ text: fact.attributes.name ?? '' }],
      own,
      { face: 'condensed', ...sizes.note, align: 'left', element: setting.placeOf(fact, 'label') },
      setting,
    ),
    ...layOutText(
      fact.children,
      own,
      { face: 'sans', ...sizes.text, align: 'left', element: setting.placeOf(fact, 'body') },
      setting,
    ),
  ]);
  const rows: Block[] = [];
  for (let first = 0; first < cells.length; first += count) {
    const strips = cells.slice(first, first + count).map((lines, index) => ({
      x: index * (own + gap),
      blocks: lines.map((line) => block(line)),
    }));
    const before = first === 0 ? spaceBefore(node) : baseline / 4;
    for (const [index, part] of sideBySide(strips, setting.room).entries())
      rows.push({ ...part, spaceBefore: index === 0 ? before : 0 });
  }
  return rows;
}
