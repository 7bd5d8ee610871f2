import type { Face } from '../fonts/faces.ts';
import type { TagNode } from '../markup/document-tree.ts';
import { baseline, sizes } from './grid.ts';
import type { TextStyle } from './lay-out-text.ts';
import type { Place } from './page.ts';

type Usual = { readonly size: keyof typeof sizes; readonly weight: string; readonly before: number };
const usual: Readonly<Record<string, Usual>> = {
  h1: { size: 'title', weight: 'bold', before: 0 },
  h2: { size: 'head', weight: 'bold', before: 2 },
  h3: { size: 'text', weight: 'bold', before: 1 },
};

/**
 * The style of a block from its attributes.
 * @param node the block
 * @param element its place in the structure
 * @param inherited size, alignment and face from around it
 */
export function styleOf(
  node: TagNode,
  element: Place,
  inherited: { readonly size?: string | undefined; readonly align?: string; readonly face?: string } = {},
): TextStyle {
  const own = usual[node.tag];
  const named = node.attributes.size ?? inherited.size ?? own?.size ?? 'text';
  const bold = (node.attributes.weight ?? own?.weight) === 'bold';
  const align = node.attributes.align ?? inherited.align ?? 'left';
  return {
    ...sizes[named in sizes ? (named as keyof typeof sizes) : 'text'],
    face: faceOf(node.attributes.face ?? inherited.face ?? 'sans', bold),
    align: align === 'decimal' ? 'right' : align === 'right' || align === 'centre' ? align : 'left',
    element,
  };
}

function faceOf(named: string, bold: boolean): Face {
  if (named === 'mono') return 'mono';
  if (named === 'condensed') return bold ? 'condensedBold' : 'condensed';
  return bold ? 'sansBold' : 'sans';
}

/** The space a block asks for above itself, in points; markup counts in half baselines. */
export function spaceBefore(node: TagNode): number {
  return (Number(node.attributes['space-before'] ?? usual[node.tag]?.before ?? 0) * baseline) / 2;
}

/** The numbers of an attribute that holds a row of them, or null where it is not given. */
export function numbersIn(value: string | undefined): readonly number[] | null {
  return value === undefined
    ? null
    : value
        .trim()
        .split(/[\s,]+/)
        .map(Number);
}
