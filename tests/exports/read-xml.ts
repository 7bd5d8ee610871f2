import { parseDocument } from 'htmlparser2';

/** An element as read back. */
export type ReadElement = {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: readonly ReadElement[];
  readonly text: string;
};

type Node = {
  readonly type: string;
  readonly name?: string;
  readonly data?: string;
  readonly attribs?: Readonly<Record<string, string>>;
  readonly children?: readonly Node[];
};

function read(node: Node): ReadElement {
  const children = node.children ?? [];
  return {
    name: node.name ?? '',
    attributes: node.attribs ?? {},
    children: children.filter((child) => child.type === 'tag').map(read),
    text: children
      .filter((child) => child.type === 'text')
      .map((child) => child.data ?? '')
      .join('')
      .trim(),
  };
}

/** Reads a document; throws when tags do not balance, an attribute is not quoted, or text holds a bare sign of markup (XML 1.0, 2.4). */
export function readXml(text: string): ReadElement {
  const token = /<\?xml [^>]*\?>|<\/([\w:.-]+)>|<([\w:.-]+)((?:\s+[\w:.-]+="[^"<]*")*)\s*(\/?)>|[^<]+/gy;
  const open: string[] = [];
  let at = 0;
  for (const match of text.matchAll(token)) {
    at = match.index + match[0].length;
    if (match[1] !== undefined && open.pop() !== match[1]) throw new Error(`</${match[1]}> closes nothing`);
    if (match[2] !== undefined && match[4] === '') open.push(match[2]);
    if (!match[0].startsWith('<') && /&(?!amp;|lt;|gt;|quot;|apos;)/.test(match[0])) throw new Error('bare &');
  }
  if (at !== text.length || open.length > 0) throw new Error(`not well-formed at ${at}: ${text.slice(at, at + 60)}`);
  const roots = (parseDocument(text, { xmlMode: true }).children as readonly Node[]).filter(
    (node) => node.type === 'tag',
  );
  if (roots.length !== 1) throw new Error(`${roots.length} outermost elements`);
  return read(roots[0] as Node);
}

/** Every element below (and with) one, in document order. */
export function everyElement(element: ReadElement): readonly ReadElement[] {
  return [element, ...element.children.flatMap(everyElement)];
}

/** Elements at a path of names ("cac:TaxTotal/cac:TaxSubtotal"). */
export function elementsAt(element: ReadElement, path: string): readonly ReadElement[] {
  return path
    .split('/')
    .reduce<readonly ReadElement[]>(
      (found, name) => found.flatMap((each) => each.children.filter((child) => child.name === name)),
      [element],
    );
}

/** Text at a path; "" when nothing is there. */
export function textAt(element: ReadElement, path: string): string {
  return elementsAt(element, path)[0]?.text ?? '';
}
