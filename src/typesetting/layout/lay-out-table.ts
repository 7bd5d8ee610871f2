import { type TagNode, tagsIn } from '../markup/document-tree.ts';
import { textTags } from '../markup/tag-set.ts';
import { type Block, block, stacked } from './block.ts';
import { type DecimalTails, decimalTails } from './decimal-tails.ts';
import { millimetre } from './grid.ts';
import { layOutText } from './lay-out-text.ts';
import { moved } from './page.ts';
import type { Setting } from './setting.ts';
import { type Strip, sideBySide } from './side-by-side.ts';
import { numbersIn, spaceBefore, styleOf } from './style-of.ts';

const padding = 1.4 * millimetre;
const aboveAndBelow = 1.5;

/**
 * The rows of a table, each a block that is never torn unless it is taller than a page; the head is printed again on every page.
 * @param node the table
 * @param width points
 * @param setting widths of text, structure
 * @throws Problem for a row with more cells than the table has columns, or a second head or foot
 */
export function layOutTable(node: TagNode, width: number, setting: Setting): readonly Block[] {
  const shares = numbersIn(node.attributes.widths) ?? [1];
  const sum = shares.reduce((all, each) => all + each, 0);
  const widths = shares.map((share) => (width * share) / sum);
  const rowsIn = (tag: string) =>
    tagsIn(node.children)
      .filter((part) => part.tag === tag)
      .flatMap((part) => tagsIn(part.children));
  const parts = tagsIn(node.children).map((part) => part.tag);
  const twice = ['thead', 'tfoot'].find((tag) => parts.indexOf(tag) !== parts.lastIndexOf(tag));
  if (twice !== undefined) throw setting.problem(`The table has two <${twice}>.`, node, 'Put all its rows into one.');
  if (shares.some((share) => share <= 0))
    throw setting.problem(
      `The widths "${node.attributes.widths}" are not all above nought.`,
      node,
      'Give each column a width above nought.',
    );
  const tails = decimalTails(
    [...rowsIn('tbody'), ...rowsIn('tfoot')],
    (cell) => cellStyle(cell, node, setting),
    setting,
  );
  const ruled = node.attributes.rules !== 'none';
  const line = (set: Block, weight: number) => ruledBelow(set, width, weight);
  const set = (row: TagNode, room: number) => layOutRow(row, { widths, tails, node }, { ...setting, room });
  const heads = rowsIn('thead').flatMap((row) => set(row, setting.room));
  const header = heads.length === 0 ? null : line(stacked(heads), 1);
  // a head that fills half a page is not worth printing again
  const again = header === null || header.height > setting.room / 2 ? null : repeated(header);
  const room = setting.room - (header?.height ?? 0);
  const [body, foot] = [rowsIn('tbody'), rowsIn('tfoot')];
  const rows = [...body, ...foot].flatMap((row, index) => {
    const parts = set(row, room > setting.room / 2 ? room : setting.room);
    const holdsFoot = index === body.length - 1 && foot.length > 0;
    const holdsNext = holdsFoot || row.attributes['keep-with-next'] === 'yes';
    return parts.map((part, index) => ({
      ...(ruled && index === parts.length - 1 ? line(part, 0.4) : part),
      header: again,
      hold: holdsNext && index === parts.length - 1 ? ('firmly' as const) : ('no' as const),
    }));
  });
  const all = header === null ? rows : [{ ...header, hold: 'firmly' as const }, ...rows];
  return all.map((each, index) => (index === 0 ? { ...each, spaceBefore: spaceBefore(node) } : each));
}

function ruledBelow(set: Block, width: number, weight: number): Block {
  const line = { kind: 'line', x: 0, y: set.height, toX: width, toY: set.height, weight, colour: '#000000' } as const;
  return { ...set, marks: [...set.marks, { ...line, element: 'layout' }] };
}

function repeated(header: Block): Block {
  return { ...header, marks: header.marks.map((mark) => ({ ...mark, element: 'repeated' })) };
}

type Table = { readonly node: TagNode; readonly widths: readonly number[]; readonly tails: DecimalTails };

function layOutRow(row: TagNode, table: Table, setting: Setting): readonly Block[] {
  const { widths, tails, node } = table;
  let column = 0;
  let x = 0;
  const strips: Strip[] = [];
  for (const cell of tagsIn(row.children)) {
    const span = Math.max(1, Math.round(Number(cell.attributes.span ?? 1)));
    const own = widths.slice(column, column + span).reduce((all, each) => all + each, 0);
    column += span;
    if (column > widths.length)
      throw setting.problem(
        `The row has more cells than the table has columns (${widths.length}).`,
        row,
        'Take a cell out, or add a width to the table.',
      );
    const style = cellStyle(cell, node, setting);
    const tail = Math.min(
      (tails.widest.get(column) ?? 0) - (tails.ofCell.get(cell) ?? Number.POSITIVE_INFINITY),
      own / 2,
    );
    const isLastRight = column === widths.length && style.align === 'right';
    const blocks = tagsIn(cell.children).some((child) => !(textTags as readonly string[]).includes(child.tag))
      ? setting.layOutInside(cell.children, own - padding, setting)
      : layOutText(cell.children, own - padding - Math.max(0, tail), style, setting).map((line) => block(line));
    const shifted = isLastRight ? blocks.map((each) => movedBlock(each, padding)) : blocks;
    strips.push({ x, blocks: shifted });
    x += own;
  }
  return sideBySide(strips, setting.room - 2 * aboveAndBelow).map((part) => ({
    ...part,
    height: part.height + 2 * aboveAndBelow,
    marks: part.marks.map((mark) => moved(mark, 0, aboveAndBelow)),
  }));
}

function movedBlock(each: Block, right: number): Block {
  return { ...each, marks: each.marks.map((mark) => moved(mark, right, 0)) };
}

function cellStyle(cell: TagNode, table: TagNode, setting: Setting) {
  const bold = cell.tag === 'th' ? { weight: 'bold' } : {};
  const heavy = { ...cell, attributes: { ...bold, ...cell.attributes } };
  return styleOf(heavy, setting.placeOf(cell), { size: table.attributes.size, face: 'condensed' });
}
