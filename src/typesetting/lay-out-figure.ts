import { type Block, block } from './block.ts';
import type { TagNode } from './document-tree.ts';
import type { Metrics } from './font-metrics.ts';
import { millimetre } from './grid.ts';
import { cleanText } from './lay-out-text.ts';
import type { Mark } from './page.ts';

const fills: Readonly<Record<string, string>> = { none: '', black: '#000000', light: '#e6e6e6', white: '#ffffff' };

/**
 * A figure of lines, boxes, circles and labels at fixed millimetres.
 * @param node the figure
 * @param metrics widths of text
 */
export function layOutFigure(node: TagNode, metrics: Metrics): Block {
  const marks = node.children.flatMap((child): readonly Mark[] => {
    if (!('tag' in child)) return [];
    const at = (name: string) => Number(child.attributes[name] ?? 0) * millimetre;
    const weight = Number(child.attributes.weight ?? 0.6);
    const fill = fills[child.attributes.fill ?? 'none'] ?? '';
    if (child.tag === 'line')
      return [{ kind: 'line', x: at('x1'), y: at('y1'), toX: at('x2'), toY: at('y2'), weight, colour: '#000000' }];
    if (child.tag === 'rect')
      return [{ kind: 'rect', x: at('x'), y: at('y'), width: at('width'), height: at('height'), weight, fill }];
    if (child.tag === 'circle') return [{ kind: 'circle', x: at('cx'), y: at('cy'), radius: at('r'), weight, fill }];
    if (child.tag !== 'label') return [];
    const text = cleanText(child.children.map((each) => ('text' in each ? each.text : '')).join('')).trim();
    const size = child.attributes.size === 'text' ? 9.5 : 8;
    const face = child.attributes.weight === 'bold' ? 'condensedBold' : 'condensed';
    const width = metrics.width(text, face, size);
    const x =
      at('x') - (child.attributes.align === 'right' ? width : child.attributes.align === 'centre' ? width / 2 : 0);
    return text === '' ? [] : [{ kind: 'text', x, y: at('y'), text, face, size, tag: 'Figure' }];
  });
  return block({
    height: Number(node.attributes.height ?? 0) * millimetre,
    marks,
    spaceBefore: (Number(node.attributes['space-before'] ?? 0) * 4.5 * millimetre) / 2,
  });
}
