import { type Block, block } from './block.ts';
import type { TagNode, TreeNode } from './document-tree.ts';
import type { Metrics } from './font-metrics.ts';
import { baseline, millimetre } from './grid.ts';
import { layOutFigure } from './lay-out-figure.ts';
import { layOutTable } from './lay-out-table.ts';
import { layOutText, type TextStyle } from './lay-out-text.ts';
import { type Face, type Mark, moved } from './page.ts';

export type Setting = { readonly metrics: Metrics; readonly accent: string };

const sizes: Readonly<Record<string, { readonly size: number; readonly leading: number }>> = {
  note: { size: 8, leading: 3.6 * millimetre },
  text: { size: 9.5, leading: baseline },
  head: { size: 11, leading: baseline },
  title: { size: 17, leading: baseline * 1.6 },
};
const defaults: Readonly<
  Record<string, { readonly size: string; readonly weight: string; readonly before: number; readonly keep: boolean }>
> = {
  h1: { size: 'title', weight: 'bold', before: 0, keep: true },
  h2: { size: 'head', weight: 'bold', before: 2, keep: true },
  h3: { size: 'text', weight: 'bold', before: 1, keep: true },
};

/** The style of a block from its attributes. */
export function styleOf(node: TagNode, inherited: { readonly size?: string; readonly align?: string } = {}): TextStyle {
  const own = defaults[node.tag];
  const size = sizes[node.attributes.size ?? inherited.size ?? own?.size ?? 'text'] ?? { size: 9.5, leading: baseline };
  const bold = (node.attributes.weight ?? own?.weight) === 'bold';
  const named = node.attributes.face ?? 'sans';
  const face: Face =
    named === 'mono'
      ? 'mono'
      : named === 'condensed'
        ? bold
          ? 'condensedBold'
          : 'condensed'
        : bold
          ? 'sansBold'
          : 'sans';
  const align = node.attributes.align ?? inherited.align ?? 'left';
  return {
    face,
    ...size,
    align: align === 'right' || align === 'centre' ? align : 'left',
    tag: node.tag.toUpperCase(),
  };
}

/** The tags among some children. */
export function tagsIn(nodes: readonly TreeNode[]): readonly TagNode[] {
  return nodes.filter((node): node is TagNode => 'tag' in node);
}

/** Blocks joined into one that is never torn. */
export function joined(blocks: readonly Block[]): Block {
  let height = 0;
  const marks: Mark[] = [];
  for (const [index, each] of blocks.entries()) {
    height += index === 0 ? 0 : each.spaceBefore;
    marks.push(...each.marks.map((mark) => moved(mark, 0, height)));
    height += each.height;
  }
  return block({ height, marks, spaceBefore: blocks[0]?.spaceBefore ?? 0 });
}

const spaceBefore = (node: TagNode, usual = 0) => (Number(node.attributes['space-before'] ?? usual) * baseline) / 2;

/**
 * The blocks of some nodes, set to a width.
 * @param nodes children of a document, column or keep
 * @param width points
 * @param setting widths of text, accent colour
 */
export function layOutBlocks(nodes: readonly TreeNode[], width: number, setting: Setting): readonly Block[] {
  return tagsIn(nodes).flatMap((node) => layOutBlock(node, width, setting));
}

function layOutBlock(node: TagNode, width: number, setting: Setting): readonly Block[] {
  switch (node.tag) {
    case 'h1':
    case 'h2':
    case 'h3':
    case 'p':
      return paragraph(node, width, setting);
    case 'columns':
      return [columns(node, width, setting)];
    case 'table':
      return layOutTable(node, width, setting);
    case 'list':
      return tagsIn(node.children).flatMap((item, place) => listItem(node, item, place, width, setting));
    case 'facts':
      return facts(node, width, setting);
    case 'keep':
      return [joined(layOutBlocks(node.children, width, setting))];
    case 'rule': {
      const colour = node.attributes.colour === 'accent' ? setting.accent : '#000000';
      return [
        block({
          height: 3,
          spaceBefore: spaceBefore(node),
          keepWithNext: true,
          marks: [
            { kind: 'line', x: 0, y: 1.5, toX: width, toY: 1.5, weight: Number(node.attributes.weight ?? 0.4), colour },
          ],
        }),
      ];
    }
    case 'space':
      return [block({ height: Number(node.attributes.lines ?? 1) * baseline, marks: [] })];
    case 'page-break':
      return [block({ height: 0, marks: [], pageBreak: true })];
    case 'figure':
      return [layOutFigure(node, setting.metrics)];
    case 'signature-field':
      return [signature(node, width, setting)];
    default:
      return [];
  }
}

function paragraph(node: TagNode, width: number, setting: Setting): readonly Block[] {
  const lines = layOutText(node.children, width, styleOf(node), setting.metrics);
  const keep = node.attributes['keep-with-next'] === 'yes' || (defaults[node.tag]?.keep ?? false);
  return lines.map((line, index) =>
    block({
      height: line.height,
      marks: line.marks,
      spaceBefore: index === 0 ? spaceBefore(node, defaults[node.tag]?.before) : 0,
      // two lines at least stay together at the head and at the foot of a page
      keepWithNext: keep || index === 0 || index === lines.length - 2 ? index < lines.length - 1 || keep : false,
    }),
  );
}

function columns(node: TagNode, width: number, setting: Setting): Block {
  const parts = tagsIn(node.children);
  const shares = (node.attributes.widths ?? parts.map(() => '1').join(' ')).split(' ').map(Number);
  const gap = Number(node.attributes.gap ?? 5) * millimetre;
  const free = width - gap * (parts.length - 1);
  const sum = shares.reduce((all, each) => all + each, 0);
  let x = 0;
  let height = 0;
  const marks: Mark[] = [];
  for (const [index, part] of parts.entries()) {
    const own = (free * (shares[index] ?? 1)) / sum;
    const set = joined(layOutBlocks(part.children, own, setting));
    marks.push(...set.marks.map((mark) => moved(mark, x, 0)));
    height = Math.max(height, set.height);
    x += own + gap;
  }
  return block({ height, marks, spaceBefore: spaceBefore(node) });
}

function listItem(list: TagNode, item: TagNode, place: number, width: number, setting: Setting): readonly Block[] {
  const indent = 4 * millimetre;
  const style = { ...styleOf(item, { size: list.attributes.size ?? 'text' }), tag: 'LBody' };
  const sign = list.attributes.kind === 'number' ? `${place + 1}.` : list.attributes.kind === 'dash' ? '–' : '•';
  return layOutText(item.children, width - indent, style, setting.metrics).map((line, index) =>
    block({
      height: line.height,
      spaceBefore: index === 0 && place === 0 ? spaceBefore(list) : 0,
      keepWithNext: index === 0 && line.marks.length > 0 && false,
      marks: [
        ...(index === 0
          ? [
              {
                kind: 'text',
                x: 0,
                y: style.leading * 0.72,
                text: sign,
                face: style.face,
                size: style.size,
                tag: 'Lbl',
              } as const,
            ]
          : []),
        ...line.marks.map((mark) => moved(mark, indent, 0)),
      ],
    }),
  );
}

function facts(node: TagNode, width: number, setting: Setting): readonly Block[] {
  const count = Number(node.attributes.columns ?? 1);
  const gap = 5 * millimetre;
  const own = (width - gap * (count - 1)) / count;
  const cells = tagsIn(node.children).map((fact) => {
    const label = layOutText(
      [{ text: fact.attributes.name ?? '' }],
      own,
      { face: 'condensed', size: 8, leading: 3.6 * millimetre, align: 'left', tag: 'P' },
      setting.metrics,
    );
    const value = layOutText(
      fact.children,
      own,
      { face: 'sans', size: 9.5, leading: baseline, align: 'left', tag: 'P' },
      setting.metrics,
    );
    return joined([...label, ...value].map((line) => block(line)));
  });
  const rows: Block[] = [];
  for (let first = 0; first < cells.length; first += count) {
    const row = cells.slice(first, first + count);
    rows.push(
      block({
        height: Math.max(...row.map((cell) => cell.height)),
        spaceBefore: first === 0 ? spaceBefore(node) : baseline / 4,
        marks: row.flatMap((cell, place) => cell.marks.map((mark) => moved(mark, place * (own + gap), 0))),
      }),
    );
  }
  return rows;
}

function signature(node: TagNode, width: number, setting: Setting): Block {
  const length = Math.min(width, Number(node.attributes.width ?? 80) * millimetre);
  const height = Number(node.attributes.height ?? 12) * millimetre;
  const label = layOutText(
    [{ text: node.attributes.label ?? '' }],
    length,
    { face: 'condensed', size: 8, leading: 3.6 * millimetre, align: 'left', tag: 'P' },
    setting.metrics,
  );
  const text = joined(label.map((line) => block(line)));
  return block({
    height: height + text.height,
    marks: [
      { kind: 'line', x: 0, y: height, toX: length, toY: height, weight: 0.4, colour: '#000000' },
      ...text.marks.map((mark) => moved(mark, 0, height + 1)),
    ],
  });
}
