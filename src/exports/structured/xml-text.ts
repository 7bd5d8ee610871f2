/** An element: its name, its attributes, and text or child elements; null stands for nothing. */
export type XmlElement = {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly content: string | readonly XmlElement[];
};

/** What may stand among the children of an element. */
export type XmlPart = XmlElement | null | readonly XmlPart[];

/**
 * An element with text, or nothing when the text is absent or empty (no rule set allows empty elements).
 * @param name with its prefix
 * @param text what it holds
 * @param attributes by name
 */
export function leaf(
  name: string,
  text: string | undefined,
  attributes: Readonly<Record<string, string>> = {},
): XmlElement | null {
  const clean = text === undefined ? '' : legalText(text).trim();
  return clean === '' ? null : { name, attributes, content: clean };
}

/**
 * An element with children, or nothing when none of them is there.
 * @param name with its prefix
 * @param parts children; lists are laid flat, nothing is left out
 * @param attributes by name
 */
export function branch(
  name: string,
  parts: readonly XmlPart[],
  attributes: Readonly<Record<string, string>> = {},
): XmlElement | null {
  const children = flat(parts);
  return children.length === 0 ? null : { name, attributes, content: children };
}

function flat(parts: readonly XmlPart[]): readonly XmlElement[] {
  return parts.flatMap((part) => (part === null ? [] : isList(part) ? flat(part) : [part]));
}

function isList(part: XmlElement | readonly XmlPart[]): part is readonly XmlPart[] {
  return Array.isArray(part);
}

// XML 1.0, production 2: other control characters, halves of a surrogate pair and two non-characters cannot be written at all;
// a mark stands for each, so that nothing given becomes nothing
function legalText(text: string): string {
  return text.replace(/\r\n?/g, '\n').replace(/[^\t\n\u0020-\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]/gu, '\uFFFD');
}

function escaped(text: string): string {
  return text
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;')
    .replaceAll("'", '&apos;');
}

function written(element: XmlElement, indent: string): string {
  const attributes = Object.entries(element.attributes)
    .map(([name, value]) => ` ${name}="${escaped(legalText(value))}"`)
    .join('');
  const open = `${indent}<${element.name}${attributes}>`;
  if (typeof element.content === 'string') return `${open}${escaped(element.content)}</${element.name}>`;
  const children = element.content.map((child) => written(child, `${indent}  `));
  return [open, ...children, `${indent}</${element.name}>`].join('\n');
}

/**
 * A whole XML document in UTF-8, one element a line, the same bytes for the same tree.
 * @param root the outermost element
 */
export function xmlText(root: XmlElement): string {
  return `<?xml version="1.0" encoding="UTF-8"?>\n${written(root, '')}\n`;
}
