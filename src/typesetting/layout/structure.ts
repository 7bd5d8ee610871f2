import { type TagNode, tagsIn } from '../markup/document-tree.ts';
import type { Place } from './page.ts';

/** An element of the structure tree (ISO 32000-1, 14.8); its place in the list is its number, parents stand before their children. */
export type StructureElement = {
  readonly role: string;
  readonly parent: number | null;
  /** text alternative of a figure, name of a field */
  readonly alternative?: string;
  /** what a table is about */
  readonly summary?: string;
  readonly scope?: 'Column' | 'Row';
  readonly span?: number;
  readonly numbering?: 'Disc' | 'Decimal' | 'None';
};
/** The part of a node that a mark belongs to: the thing itself, its label or its body. */
export type Part = 'own' | 'label' | 'body';
export type Structure = {
  readonly elements: readonly StructureElement[];
  readonly placeOf: (node: TagNode, part?: Part) => Place;
};

const roles: Readonly<Record<string, string>> = {
  document: 'Document',
  h1: 'H1',
  h2: 'H2',
  h3: 'H3',
  p: 'P',
  table: 'Table',
  thead: 'THead',
  tbody: 'TBody',
  tfoot: 'TFoot',
  tr: 'TR',
  th: 'TH',
  td: 'TD',
  list: 'L',
  facts: 'L',
  figure: 'Figure',
  image: 'Figure',
};
const numberings = { bullet: 'Disc', number: 'Decimal', dash: 'None' } as const;

/**
 * The structure of a document, in the order of its source: what a reader follows who does not see the page.
 * @param document the tree
 */
export function structureOf(document: TagNode): Structure {
  const elements: StructureElement[] = [];
  const places = new Map<TagNode, Partial<Record<Part, number>>>();
  const add = (element: StructureElement) => elements.push(element) - 1;
  const inRow = (row: TagNode, columns: number, own: number) => {
    const used = tagsIn(row.children).reduce((sum, cell) => sum + Number(cell.attributes.span ?? 1), 0);
    for (let column = used; column < columns; column += 1) add({ role: 'TD', parent: own });
  };
  const visit = (node: TagNode, parent: number | null, columns: number): void => {
    if (node.tag === 'footer') return;
    const role = roles[node.tag];
    if (node.tag === 'item' || node.tag === 'fact') {
      const item = add({ role: 'LI', parent });
      places.set(node, { label: add({ role: 'Lbl', parent: item }), body: add({ role: 'LBody', parent: item }) });
    } else if (node.tag === 'signature-field') {
      const label = add({ role: 'P', parent });
      places.set(node, { label, own: add({ role: 'Form', parent, alternative: node.attributes.label ?? '' }) });
    } else if (role !== undefined) {
      const own = add({ role, parent, ...attributesOf(node) });
      places.set(node, { own });
      const inside = node.tag === 'table' ? (node.attributes.widths ?? '1').trim().split(/[\s,]+/).length : columns;
      for (const child of tagsIn(node.children)) visit(child, own, inside);
      if (node.tag === 'tr') inRow(node, columns, own);
      // ISO 14289-1, 7.2: a table with a head or a foot has a body, even an empty one
      if (node.tag === 'table' && !tagsIn(node.children).some((part) => part.tag === 'tbody'))
        add({ role: 'TBody', parent: own });
    } else for (const child of tagsIn(node.children)) visit(child, parent, columns);
  };
  visit(document, null, 1);
  return { elements, placeOf: (node, part = 'own') => places.get(node)?.[part] ?? 'layout' };
}

function attributesOf(node: TagNode): Partial<StructureElement> {
  const span = Number(node.attributes.span ?? 1);
  const spanned = span > 1 ? { span } : {};
  if (node.tag === 'th') return { scope: node.attributes.scope === 'row' ? 'Row' : 'Column', ...spanned };
  if (node.tag === 'td') return spanned;
  if (node.tag === 'figure' || node.tag === 'image') return { alternative: node.attributes.alt ?? '' };
  if (node.tag === 'table' && node.attributes.caption !== undefined) return { summary: node.attributes.caption };
  if (node.tag === 'list') {
    const kind = node.attributes.kind;
    return { numbering: kind === 'number' ? numberings.number : kind === 'dash' ? numberings.dash : numberings.bullet };
  }
  return node.tag === 'facts' ? { numbering: 'None' } : {};
}
