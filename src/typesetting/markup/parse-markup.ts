import { Parser } from 'htmlparser2';
import { Problem } from '../../problem.ts';
import { type TagNode, type TreeNode, tagsIn } from './document-tree.ts';
import { lineAttribute } from './mark-lines.ts';
import { type AttributeKind, type Content, isBlockTag, tagSet, textTags } from './tag-set.ts';

type Open = { tag: string; line: number; attributes: Record<string, string>; children: TreeNode[] };
type Fail = (what: string, line: number) => Problem;

/**
 * The tree of a document from its markup.
 * @param markup the filled template
 * @param name the template's name, for messages
 * @throws Problem naming the line of an unknown tag or attribute, a value an attribute cannot hold, a tag where none may stand or a tag that is not closed
 */
export function parseMarkup(markup: string, name: string): TagNode {
  const root: Open = { tag: '', line: 1, attributes: {}, children: [] };
  const stack: Open[] = [root];
  const top = () => stack.at(-1) ?? root;
  const lineAt = lineCounter(markup);
  const fail: Fail = (what, line) =>
    new Problem(what, `${name}, line ${line}`, 'The tags and attributes that exist are listed in TEMPLATES.md.');
  const closes = new Set<number>();
  const closesItself = () => markup.slice(parser.endIndex - 1, parser.endIndex + 1) === '/>';
  const parser = new Parser(
    {
      onopentag: (tag, { [lineAttribute]: marked, ...attributes }) => {
        const line = marked === undefined ? lineAt(parser.startIndex) : Number(marked);
        checkAttributes(tag, attributes, line, fail);
        const parent = top();
        if (parent !== root && !mayHold(parent.tag, tag))
          throw fail(`The tag <${tag}> may not stand inside <${parent.tag}>.`, line);
        stack.push({ tag, line, attributes, children: [] });
      },
      onclosetag: (tag, implied) => {
        const closed = stack.pop();
        if (closed === undefined || closed.tag !== tag || (implied && !closesItself()))
          throw fail(`The tag <${tag}> is not closed.`, closed?.line ?? 1);
        if (!implied) closes.add(parser.startIndex);
        top().children.push(closed);
      },
      ontext: (text) => {
        const parent = top();
        if (text.trim() !== '' && !mayHoldText(parent.tag))
          throw fail(
            `The text "${text.trim().slice(0, 40)}" may not stand directly inside <${parent.tag || 'nothing'}>.`,
            parent === root ? 1 : parent.line,
          );
        // the parser hands over a text in pieces where a character is written as &#…;
        const last = parent.children.at(-1);
        if (last !== undefined && 'text' in last)
          parent.children[parent.children.length - 1] = { text: last.text + text };
        else parent.children.push({ text });
      },
    },
    { xmlMode: true, decodeEntities: true },
  );
  parser.write(markup);
  parser.end();
  checkClosingTags(markup, closes, fail);
  const [document, ...others] = tagsIn(root.children);
  if (document?.tag !== 'document') throw fail('The outermost tag is not <document>.', document?.line ?? 1);
  if (others[0] !== undefined) throw fail('There is a tag after the end of <document>.', others[0].line);
  checkHeadings(document, fail);
  checkFieldNames(document, fail);
  return document;
}

// places only grow while the parser reads, so lines are counted once
function lineCounter(markup: string): (place: number) => number {
  let counted = 0;
  let line = 1;
  return (index) => {
    for (; counted < index; counted += 1) if (markup.charCodeAt(counted) === 10) line += 1;
    return line;
  };
}

function checkAttributes(tag: string, attributes: Readonly<Record<string, string>>, line: number, fail: Fail): void {
  const rule = Object.hasOwn(tagSet, tag) ? tagSet[tag] : undefined;
  if (rule === undefined) throw fail(`There is no tag <${tag}>.`, line);
  for (const [attribute, value] of Object.entries(attributes)) {
    const kind = Object.hasOwn(rule.attributes, attribute) ? rule.attributes[attribute] : undefined;
    if (kind === undefined) throw fail(`The tag <${tag}> has no attribute "${attribute}".`, line);
    const wanted = expectation(kind, value);
    if (wanted !== null) throw fail(`The attribute ${attribute}="${value}" of <${tag}> is not ${wanted}.`, line);
  }
  const missing = rule.required?.find((each) => (attributes[each] ?? '').trim() === '');
  if (missing !== undefined) throw fail(`The tag <${tag}> lacks its attribute "${missing}".`, line);
}

const number = /^-?\d+(\.\d+)?$/;

function expectation(kind: AttributeKind, value: string): string | null {
  if (kind === 'text') return null;
  if (kind === 'number') return number.test(value.trim()) ? null : 'a number';
  if (kind === 'numbers')
    return value
      .trim()
      .split(/[\s,]+/)
      .every((each) => number.test(each))
      ? null
      : 'a row of numbers';
  if (kind === 'colour') return /^#[0-9a-fA-F]{6}$/.test(value) ? null : 'a colour written #rrggbb';
  return kind.includes(value) ? null : `one of ${kind.join(', ')}`;
}

function mayHold(parent: string, tag: string): boolean {
  const content: Content = tagSet[parent]?.content ?? 'nothing';
  if (content === 'nothing') return false;
  const isText = (textTags as readonly string[]).includes(tag);
  if (content === 'text') return isText;
  if (content === 'blocks') return isBlockTag(tag) || (parent === 'document' && tag === 'footer');
  if (content === 'text or blocks') return isText || isBlockTag(tag);
  return content.includes(tag);
}

function mayHoldText(parent: string): boolean {
  const content = tagSet[parent]?.content;
  return content === 'text' || content === 'text or blocks';
}

// the parser passes over a closing tag that nothing opened
function checkClosingTags(markup: string, closes: ReadonlySet<number>, fail: Fail): void {
  const withoutComments = markup.replace(/<!--.*?-->/gs, (comment) => ' '.repeat(comment.length));
  for (const found of withoutComments.matchAll(/<\/[\w-]+/g))
    if (!closes.has(found.index))
      throw fail(`The tag ${found[0]}> closes nothing.`, markup.slice(0, found.index).split('\n').length);
}

// a reader who jumps from head to head must not meet a gap (ISO 14289-1, 7.4.2)
function checkHeadings(document: TagNode, fail: Fail): void {
  let level = 0;
  const visit = (node: TagNode): void => {
    if (/^h[1-3]$/.test(node.tag)) {
      const own = Number(node.tag[1]);
      if (own > level + 1)
        throw fail(
          level === 0 ? `The first head is <${node.tag}>, not <h1>.` : `The head <${node.tag}> follows <h${level}>.`,
          node.line,
        );
      level = own;
    }
    for (const child of tagsIn(node.children)) visit(child);
  };
  visit(document);
}

function checkFieldNames(document: TagNode, fail: Fail): void {
  const names = new Set<string>();
  const visit = (node: TagNode): void => {
    const name = node.attributes.name ?? '';
    if (node.tag === 'signature-field') {
      if (names.has(name)) throw fail(`Of the signature fields, two are named "${name}".`, node.line);
      names.add(name);
    }
    for (const child of tagsIn(node.children)) visit(child);
  };
  visit(document);
}
