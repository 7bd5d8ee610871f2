import { type PDFContext, type PDFDict, PDFHexString, PDFName, type PDFObject, type PDFRef } from 'pdf-lib';
import { type Box, markBox } from '../layout/mark-box.ts';
import type { Page } from '../layout/page.ts';
import type { StructureElement } from '../layout/structure.ts';
import { digits } from './digits.ts';

/** A page as it was drawn: its object, and the element of each marked piece by MCID. */
export type DrawnPage = { readonly page: Page; readonly ref: PDFRef; readonly owners: readonly number[] };
/** A field's widget on a page, and the element it belongs to. */
export type DrawnField = { readonly ref: PDFRef; readonly pageRef: PDFRef; readonly element: number };
type Literal = string | number | number[] | PDFObject;

/**
 * The structure tree with its way back from every marked piece and field (ISO 32000-1, 14.7); elements that nothing stands in are left out.
 * @param context the file's objects
 * @param elements the structure by number, parents first
 * @param pages the drawn pages in order; page n has the key n in the parent tree, field m the key pages + m
 * @param fields the drawn fields in order
 */
export function writeStructure(
  context: PDFContext,
  elements: readonly StructureElement[],
  pages: readonly DrawnPage[],
  fields: readonly DrawnField[],
): PDFRef {
  const root = context.nextRef();
  const contents: PDFObject[][] = elements.map(() => []);
  const firstPage = new Map<number, DrawnPage>();
  for (const drawn of pages)
    for (const [number, owner] of drawn.owners.entries()) {
      contents[owner]?.push(context.obj({ Type: 'MCR', Pg: drawn.ref, MCID: number }));
      if (!firstPage.has(owner)) firstPage.set(owner, drawn);
    }
  for (const field of fields)
    contents[field.element]?.push(context.obj({ Type: 'OBJR', Pg: field.pageRef, Obj: field.ref }));
  const kept = keptElements(elements, contents);
  const refs = elements.map((_, number) => (kept[number] ? context.nextRef() : null));
  const children = new Map<number | null, PDFRef[]>();
  for (const [number, element] of elements.entries()) {
    const ref = refs[number];
    if (ref !== null && ref !== undefined) children.set(element.parent, [...(children.get(element.parent) ?? []), ref]);
  }
  for (const [number, element] of elements.entries()) {
    const ref = refs[number];
    if (ref === null || ref === undefined) continue;
    const parent = element.parent === null ? root : (refs[element.parent] ?? root);
    const kids = [...(contents[number] ?? []), ...(children.get(number) ?? [])];
    const entry = context.obj({ Type: 'StructElem', S: element.role, P: parent, K: kids });
    describe(context, entry, number, element, firstPage.get(number));
    context.assign(ref, entry);
  }
  const parents = [
    ...pages.flatMap((drawn, key) => [key, drawn.owners.map((owner) => refs[owner] ?? root)]),
    ...fields.flatMap((field, index) => [pages.length + index, refs[field.element] ?? root]),
  ];
  const parentTree = context.register(context.obj({ Nums: parents }));
  const next = pages.length + fields.length;
  context.assign(
    root,
    context.obj({ Type: 'StructTreeRoot', K: [refs[0] ?? root], ParentTree: parentTree, ParentTreeNextKey: next }),
  );
  return root;
}

// cells stand even when empty, so that a table keeps its columns; so does the body of a table that has a head
function keptElements(elements: readonly StructureElement[], contents: readonly PDFObject[][]): readonly boolean[] {
  const kept = elements.map(
    (element, number) => number === 0 || (contents[number]?.length ?? 0) > 0 || /^T[DH]$/.test(element.role),
  );
  for (let number = elements.length - 1; number > 0; number -= 1) {
    const parent = elements[number]?.parent;
    if (kept[number] && parent !== null && parent !== undefined) kept[parent] = true;
  }
  for (const [number, { role, parent }] of elements.entries())
    if (role === 'TBody' && parent !== null && kept[parent]) kept[number] = true;
  return kept;
}

function describe(
  context: PDFContext,
  entry: PDFDict,
  number: number,
  element: StructureElement,
  drawn: DrawnPage | undefined,
): void {
  const attributes = (values: Readonly<Record<string, Literal>>) => entry.set(PDFName.of('A'), context.obj(values));
  if (element.alternative !== undefined) entry.set(PDFName.of('Alt'), PDFHexString.fromText(element.alternative));
  if (element.role === 'Figure' && drawn !== undefined) {
    entry.set(PDFName.of('Pg'), drawn.ref);
    attributes({ O: 'Layout', Placement: 'Block', BBox: figureBox(drawn.page, number) });
  }
  if (element.role === 'Table' && element.summary !== undefined)
    attributes({ O: 'Table', Summary: PDFHexString.fromText(element.summary) });
  if (element.scope !== undefined || element.span !== undefined)
    attributes({
      O: 'Table',
      ...(element.scope === undefined ? {} : { Scope: element.scope }),
      ...(element.span === undefined ? {} : { ColSpan: element.span }),
    });
  if (element.numbering !== undefined) attributes({ O: 'List', ListNumbering: element.numbering });
}

function figureBox(page: Page, element: number): number[] {
  const boxes: readonly Box[] = page.marks.filter((mark) => mark.element === element).map(markBox);
  const corners = [
    Math.min(...boxes.map((box) => box.left)),
    page.height - Math.max(...boxes.map((box) => box.bottom)),
    Math.max(...boxes.map((box) => box.right)),
    page.height - Math.min(...boxes.map((box) => box.top)),
  ];
  return corners.map((each) => Number(digits(each)));
}
