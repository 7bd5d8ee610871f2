import { Parser } from 'htmlparser2';
import { Problem } from '../problem.ts';
import { type TagNode, type TreeNode, tagSet } from './document-tree.ts';

type Open = { tag: string; line: number; attributes: Record<string, string>; children: TreeNode[] };

/**
 * The tree of a document from its markup.
 * @param markup the filled template
 * @param name the template's name, for messages
 * @throws Problem naming the line of an unknown tag, an unknown attribute or a tag that is not closed
 */
export function parseMarkup(markup: string, name: string): TagNode {
  const root: Open = { tag: '', line: 1, attributes: {}, children: [] };
  const stack: Open[] = [root];
  const top = () => stack.at(-1) ?? root;
  const lineAt = (place: number) => markup.slice(0, place).split('\n').length;
  const fail = (what: string, line: number) =>
    new Problem(
      what,
      `${name}, line ${line} of the filled template`,
      'The tags and attributes that exist are listed in src/typesetting/document-tree.ts.',
    );
  const parser = new Parser(
    {
      onopentag: (tag, attributes) => {
        const line = lineAt(parser.startIndex);
        const allowed = tagSet[tag];
        if (allowed === undefined) throw fail(`There is no tag <${tag}>.`, line);
        const unknown = Object.keys(attributes).find((each) => !allowed.includes(each));
        if (unknown !== undefined) throw fail(`The tag <${tag}> has no attribute "${unknown}".`, line);
        stack.push({ tag, line, attributes, children: [] });
      },
      onclosetag: (tag, implied) => {
        const closed = stack.pop();
        if (closed === undefined || closed.tag !== tag || (implied && parser.endIndex >= markup.length))
          throw fail(`The tag <${tag}> is not closed.`, closed?.line ?? 1);
        top().children.push(closed);
      },
      ontext: (text) => {
        top().children.push({ text });
      },
    },
    { xmlMode: true, decodeEntities: true },
  );
  parser.write(markup);
  parser.end();
  const document = root.children.find((child): child is TagNode => 'tag' in child);
  if (document?.tag !== 'document') throw fail('The outermost tag is not <document>.', document?.line ?? 1);
  return document;
}
