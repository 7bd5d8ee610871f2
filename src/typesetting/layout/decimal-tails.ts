import { cleanText } from '../markup/clean-text.ts';
import { type TagNode, type TreeNode, tagsIn } from '../markup/document-tree.ts';
import type { TextStyle } from './lay-out-text.ts';
import type { Setting } from './setting.ts';

/** Width of what stands behind a number's last whole digit, by cell, and the widest of each column, in points. */
export type DecimalTails = {
  readonly ofCell: ReadonlyMap<TagNode, number>;
  readonly widest: ReadonlyMap<number, number>;
};

/**
 * What the cells with align="decimal" need to stand with their decimal signs below each other.
 * @param rows rows of one table
 * @param styleOf the style of a cell
 * @param setting widths of text, decimal sign of the language
 */
export function decimalTails(
  rows: readonly TagNode[],
  styleOf: (cell: TagNode) => TextStyle,
  setting: Setting,
): DecimalTails {
  const ofCell = new Map<TagNode, number>();
  const widest = new Map<number, number>();
  for (const row of rows) {
    let column = 0;
    for (const cell of tagsIn(row.children)) {
      column += Number(cell.attributes.span ?? 1);
      if (cell.attributes.align !== 'decimal' || cell.tag === 'th') continue;
      const { face, size } = styleOf(cell);
      const width = setting.metrics.width(tailOf(textOf(cell.children), setting.decimalSign), face, size);
      ofCell.set(cell, width);
      widest.set(column, Math.max(widest.get(column) ?? 0, width));
    }
  }
  return { ofCell, widest };
}

function textOf(nodes: readonly TreeNode[]): string {
  return cleanText(nodes.map((node) => ('text' in node ? node.text : textOf(node.children))).join('')).trim();
}

function tailOf(text: string, decimalMark: string): string {
  const at = text.lastIndexOf(decimalMark);
  if (at >= 0 && /\d/.test(text[at + 1] ?? '')) return text.slice(at);
  return /^[^\d]*[\d.,\s]*\d(.*)$/s.exec(text)?.[1] ?? '';
}
