import { type Block, block } from './block.ts';
import type { TagNode } from './document-tree.ts';
import { millimetre } from './grid.ts';
import { joined, layOutBlocks, type Setting, styleOf, tagsIn } from './lay-out-blocks.ts';
import { layOutText } from './lay-out-text.ts';
import { type Mark, moved } from './page.ts';

const padding = 1.4 * millimetre;

/**
 * The rows of a table, each a block that is never torn; the head is repeated on every page.
 * @param node the table
 * @param width points
 * @param setting widths of text, accent colour
 */
export function layOutTable(node: TagNode, width: number, setting: Setting): readonly Block[] {
  const shares = (node.attributes.widths ?? '1').split(' ').map(Number);
  const sum = shares.reduce((all, each) => all + each, 0);
  const widths = shares.map((share) => (width * share) / sum);
  const parts = tagsIn(node.children);
  const heads = parts.filter((part) => part.tag === 'thead').flatMap((part) => tagsIn(part.children));
  const rows = parts.filter((part) => part.tag !== 'thead').flatMap((part) => tagsIn(part.children));
  const ruled = node.attributes.rules !== 'none';
  const header =
    heads.length === 0 ? null : ruledBelow(joined(heads.map((row) => layOutRow(row, widths, node, setting))), width, 1);
  const before = (Number(node.attributes['space-before'] ?? 0) * 4.5 * millimetre) / 2;
  const body = rows.map((row, index) => {
    const set = layOutRow(row, widths, node, setting);
    const lined = ruled ? ruledBelow(set, width, 0.4) : set;
    return {
      ...lined,
      header,
      keepWithNext: row.attributes['keep-with-next'] === 'yes',
      spaceBefore: header === null && index === 0 ? before : 0,
    };
  });
  return header === null ? body : [{ ...header, spaceBefore: before, keepWithNext: true }, ...body];
}

function ruledBelow(set: Block, width: number, weight: number): Block {
  return {
    ...set,
    marks: [
      ...set.marks,
      { kind: 'line', x: 0, y: set.height, toX: width, toY: set.height, weight, colour: '#000000' },
    ],
  };
}

function layOutRow(row: TagNode, widths: readonly number[], table: TagNode, setting: Setting): Block {
  let column = 0;
  let x = 0;
  let height = 0;
  const marks: Mark[] = [];
  for (const cell of tagsIn(row.children)) {
    const span = Number(cell.attributes.span ?? 1);
    const own = widths.slice(column, column + span).reduce((all, each) => all + each, 0);
    const inner = own - padding;
    const style = styleOf(cell, {
      size: table.attributes.size ?? 'text',
      align: cell.attributes.align === 'decimal' ? 'right' : (cell.attributes.align ?? 'left'),
    });
    const faced =
      cell.attributes.face === undefined
        ? {
            ...style,
            face:
              cell.tag === 'th' || cell.attributes.weight === 'bold'
                ? ('condensedBold' as const)
                : ('condensed' as const),
          }
        : style;
    const aligned = cell.attributes.align === 'decimal' ? { ...faced, align: 'right' as const } : faced;
    const blocks = tagsIn(cell.children).some((child) => child.tag === 'p')
      ? layOutBlocks(cell.children, inner, setting)
      : layOutText(cell.children, inner, { ...aligned, tag: cell.tag.toUpperCase() }, setting.metrics).map((line) =>
          block(line),
        );
    const set = joined(blocks);
    const isLast = column + span >= widths.length;
    const shift = aligned.align === 'right' && isLast ? padding : 0;
    marks.push(...set.marks.map((mark) => moved(mark, x + shift, 1.5)));
    height = Math.max(height, set.height + 3);
    x += own;
    column += span;
  }
  return block({ height, marks });
}
