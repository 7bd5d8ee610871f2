import type { Problem } from '../../problem.ts';
import { type TagNode, type TreeNode, tagsIn } from '../markup/document-tree.ts';
import { type Block, block, type Hold } from './block.ts';
import { baseline, millimetre } from './grid.ts';
import { layOutFacts } from './lay-out-facts.ts';
import { layOutFigure } from './lay-out-figure.ts';
import { layOutImage } from './lay-out-image.ts';
import { layOutList } from './lay-out-list.ts';
import { layOutSignature } from './lay-out-signature.ts';
import { layOutTable } from './lay-out-table.ts';
import { layOutText, type TextSetting } from './lay-out-text.ts';
import { sideBySide } from './side-by-side.ts';
import type { Structure } from './structure.ts';
import { numbersIn, spaceBefore, styleOf } from './style-of.ts';

export type Setting = TextSetting & {
  readonly accent: string;
  /** the sign before the decimals of a number in the document's language */
  readonly decimalSign: string;
  /** height that a page has for its content, in points */
  readonly room: number;
  readonly placeOf: Structure['placeOf'];
  readonly images: Readonly<Record<string, Uint8Array>>;
  /** an error at a node, with the template's name and the line */
  readonly problem: (what: string, node: TagNode, whatToDo: string) => Problem;
};

/**
 * The blocks of some nodes, set to a width.
 * @param nodes children of a document, column, cell or keep
 * @param width points
 * @param setting widths of text, accent colour, structure
 * @throws Problem for an image that is missing or cannot be read, or a table row with too many cells
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
      return columns(node, width, setting);
    case 'table':
      return layOutTable(node, width, setting);
    case 'list':
      return layOutList(node, width, setting);
    case 'facts':
      return layOutFacts(node, width, setting);
    case 'keep':
      return kept(node, width, setting);
    case 'rule':
      return [ruleBlock(node, width, setting)];
    case 'space': {
      const height = Number(node.attributes.lines ?? 1) * baseline;
      return [block({ height, marks: [], blank: true, hold: 'firmly' })];
    }
    case 'page-break':
      return [block({ height: 0, marks: [], pageBreak: true })];
    case 'figure':
      return [layOutFigure(node, width, setting)];
    case 'image':
      return [layOutImage(node, width, setting)];
    default:
      return [layOutSignature(node, width, setting)];
  }
}

function ruleBlock(node: TagNode, width: number, setting: Setting): Block {
  const weight = Number(node.attributes.weight ?? 0.4);
  const colour = node.attributes.colour === 'accent' ? setting.accent : '#000000';
  return block({
    height: 3,
    spaceBefore: spaceBefore(node),
    hold: 'firmly',
    marks: [{ kind: 'line', x: 0, y: 1.5, toX: width, toY: 1.5, weight, colour, element: 'layout' }],
  });
}

const headTags = ['h1', 'h2', 'h3'];

function paragraph(node: TagNode, width: number, setting: Setting): readonly Block[] {
  const lines = layOutText(node.children, width, styleOf(node, setting.placeOf(node)), setting);
  const holdsNext = headTags.includes(node.tag) || node.attributes['keep-with-next'] === 'yes';
  const last = lines.length - 1;
  return lines.map((line, index) => {
    // two lines at least stay together at the head and at the foot of a page
    const inside: Hold = headTags.includes(node.tag) || index === 0 || index === last - 1 ? 'firmly' : 'no';
    return block({
      height: line.height,
      marks: line.marks,
      spaceBefore: index === 0 ? spaceBefore(node) : 0,
      hold: index === last ? (holdsNext ? 'firmly' : 'no') : inside,
    });
  });
}

function kept(node: TagNode, width: number, setting: Setting): readonly Block[] {
  const blocks = layOutBlocks(node.children, width, setting);
  return blocks.map((each, index) => ({
    ...each,
    ...(index < blocks.length - 1 && each.hold === 'no' ? { hold: 'loosely' as const } : {}),
    ...(index === 0 && node.attributes['with-previous'] === 'yes' ? { holdsPrevious: true } : {}),
  }));
}

function columns(node: TagNode, width: number, setting: Setting): readonly Block[] {
  const parts = tagsIn(node.children);
  const shares = numbersIn(node.attributes.widths) ?? parts.map(() => 1);
  if (shares.length !== parts.length || shares.some((share) => share <= 0))
    throw setting.problem(
      `There are ${parts.length} columns, but widths="${node.attributes.widths}".`,
      node,
      'Give each column a width above nought.',
    );
  const gap = Number(node.attributes.gap ?? 5) * millimetre;
  const free = width - gap * (parts.length - 1);
  const sum = shares.reduce((all, each) => all + each, 0);
  let x = 0;
  const strips = parts.map((part, index) => {
    const own = (free * (shares[index] ?? 1)) / sum;
    const strip = { x, blocks: layOutBlocks(part.children, own, setting) };
    x += own + gap;
    return strip;
  });
  return sideBySide(strips, setting.room).map((each, index) =>
    index === 0 ? { ...each, spaceBefore: spaceBefore(node) } : each,
  );
}
