import { type TagNode, tagsIn } from '../markup/document-tree.ts';
import { type Block, block } from './block.ts';
import { millimetre } from './grid.ts';
import { layOutText } from './lay-out-text.ts';
import { moved } from './page.ts';
import type { Setting } from './setting.ts';
import { spaceBefore, styleOf } from './style-of.ts';

/**
 * The lines of a list, each item with its bullet or number before it.
 * @param list the list
 * @param width points
 * @param setting widths of text, structure
 */
export function layOutList(list: TagNode, width: number, setting: Setting): readonly Block[] {
  const items = tagsIn(list.children);
  const bullet = (index: number) =>
    list.attributes.kind === 'number' ? `${index + 1}.` : list.attributes.kind === 'dash' ? '–' : '•';
  const style = styleOf(list, 'layout');
  const widest = setting.metrics.width(bullet(items.length - 1), style.face, style.size);
  const indent = Math.max(4 * millimetre, widest + 1.5 * millimetre);
  return items.flatMap((item, at) => {
    const label = layOutText(
      [{ text: bullet(at) }],
      indent,
      { ...style, element: setting.placeOf(item, 'label') },
      setting,
    );
    const lines = layOutText(
      item.children,
      width - indent,
      { ...style, element: setting.placeOf(item, 'body') },
      setting,
    );
    return lines.map((line, index) =>
      block({
        height: line.height,
        marks: [...(index === 0 ? (label[0]?.marks ?? []) : []), ...line.marks.map((mark) => moved(mark, indent, 0))],
        spaceBefore: at === 0 && index === 0 ? spaceBefore(list) : 0,
        // two lines at least stay together at the head and at the foot of a page
        hold: index < lines.length - 1 && (index === 0 || index === lines.length - 2) ? 'firmly' : 'no',
      }),
    );
  });
}
