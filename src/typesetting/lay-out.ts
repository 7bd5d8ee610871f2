import { type Block, block } from './block.ts';
import type { TagNode } from './document-tree.ts';
import type { Metrics } from './font-metrics.ts';
import { baseline, millimetre } from './grid.ts';
import { joined, layOutBlocks, type Setting, tagsIn } from './lay-out-blocks.ts';
import { type Mark, moved, type Page } from './page.ts';

const papers: Readonly<Record<string, readonly [number, number]>> = { letter: [612, 792], a4: [595.28, 841.89] };
const margin = 16 * millimetre;
const marginBottom = 20 * millimetre;

/**
 * Pages from a document's tree: every mark at its place, nothing left to decide.
 * @param document the tree
 * @param metrics widths of text
 */
export function layOut(document: TagNode, metrics: Metrics): readonly Page[] {
  const [width, height] = papers[document.attributes.paper ?? 'letter'] ?? [612, 792];
  const setting: Setting = { metrics, accent: document.attributes.accent ?? '#000000' };
  const inner = width - 2 * margin;
  const footer = tagsIn(document.children).find((node) => node.tag === 'footer');
  const blocks = layOutBlocks(
    document.children.filter((node) => !('tag' in node) || node.tag !== 'footer'),
    inner,
    setting,
  );
  const pages = paginate(blocks, height - margin - marginBottom);
  const footers =
    footer === undefined ? [] : tagsIn(footer.children).flatMap((node) => layOutBlocks([node], inner, setting));
  const foot = overlaid(footers);
  return pages.map((marks, index) => ({
    width,
    height,
    marks: [
      ...marks.map((mark) => moved(mark, margin, margin)),
      ...foot.marks.map((mark) =>
        numbered(moved(mark, margin, height - marginBottom + baseline * 0.6), index + 1, pages.length),
      ),
    ],
  }));
}

// left and right notes of the footer stand on one line
function overlaid(blocks: readonly Block[]): Block {
  return block({
    height: Math.max(0, ...blocks.map((each) => each.height)),
    marks: blocks.flatMap((each) => each.marks),
  });
}

function numbered(mark: Mark, page: number, count: number): Mark {
  return mark.kind === 'text'
    ? { ...mark, tag: null, text: mark.text.replace('\u{e000}', String(page)).replace('\u{e001}', String(count)) }
    : mark;
}

function chains(blocks: readonly Block[]): readonly (readonly Block[])[] {
  const all: Block[][] = [];
  let open: Block[] = [];
  for (const each of blocks) {
    open.push(each);
    if (each.keepWithNext) continue;
    all.push(open);
    open = [];
  }
  return open.length > 0 ? [...all, open] : all;
}

function paginate(blocks: readonly Block[], room: number): readonly (readonly Mark[])[] {
  const pages: Mark[][] = [[]];
  let y = 0;
  const place = (set: Block) => {
    pages.at(-1)?.push(...set.marks.map((mark) => moved(mark, 0, y)));
    y += set.height;
  };
  const turn = () => {
    pages.push([]);
    y = 0;
  };
  for (const chain of chains(blocks)) {
    const whole = joined(chain);
    if (chain[0]?.pageBreak === true) {
      if (y > 0) turn();
      continue;
    }
    if (y > 0 && y + whole.spaceBefore + whole.height > room) {
      turn();
      const header = chain[0]?.header;
      if (header !== null && header !== undefined) place(header);
    }
    for (const each of chain) {
      if (y > 0) y += each.spaceBefore;
      if (y > 0 && y + each.height > room) {
        turn();
        if (each.header !== null) place(each.header);
      }
      place(each);
    }
  }
  return pages;
}
