import { Problem } from '../../problem.ts';
import type { Metrics } from '../fonts/font-metrics.ts';
import { type TagNode, tagsIn } from '../markup/document-tree.ts';
import { baseline, margin, marginBottom, millimetre } from './grid.ts';
import { layOutBlocks } from './lay-out-blocks.ts';
import { type Mark, moved, type Page } from './page.ts';
import { paginate } from './paginate.ts';
import type { Setting } from './setting.ts';
import { type StructureElement, structureOf } from './structure.ts';

// points: ANSI/ASME Y14.1 letter, ISO 216 A4
const papers: Readonly<Record<string, readonly [number, number]>> = { letter: [612, 792], a4: [595.28, 841.89] };

// from the end of the text to the footer, and from the footer to the edge of the paper, in points
const footOffset = baseline * 0.6;
const footMargin = 5 * millimetre;

export type LaidOut = { readonly pages: readonly Page[]; readonly elements: readonly StructureElement[] };

/**
 * Pages from a document's tree: every mark at its place, nothing left to decide.
 * @param document the tree
 * @param metrics widths of text
 * @param images bytes of JPEG and PNG pictures by the name they have in the markup
 * @param template the template's name, for messages
 * @throws Problem for a picture that is missing or unreadable, a shape outside its figure, a row with too many cells
 */
export function layOut(
  document: TagNode,
  metrics: Metrics,
  images: Readonly<Record<string, Uint8Array>>,
  template: string,
): LaidOut {
  const [width, height] = papers[document.attributes.paper ?? 'letter'] ?? [612, 792];
  const { elements, placeOf } = structureOf(document);
  const atFoot: Setting = {
    metrics,
    images,
    placeOf,
    accent: document.attributes.accent ?? '#000000',
    decimalSign: decimalSign(document.attributes.lang ?? 'en'),
    room: height - margin - marginBottom,
    layOutInside: layOutBlocks,
    problem: (what, node, whatToDo) => new Problem(what, `${template}, line ${node.line}`, whatToDo),
  };
  const inner = width - 2 * margin;
  const isFooter = (node: TagNode) => node.tag === 'footer';
  const footers = tagsIn(document.children).filter(isFooter);
  const footHeight = Math.max(0, ...footers.flatMap((each) => footerMarks(each, inner, atFoot)).map((mark) => mark.y));
  // a footer of many lines grows upwards
  const footGrowth = Math.max(0, footHeight + footOffset - marginBottom + footMargin);
  const setting = { ...atFoot, room: atFoot.room - footGrowth };
  const body = tagsIn(document.children).filter((node) => !isFooter(node));
  const contents = paginate(layOutBlocks(body, inner, setting), setting.room);
  const pages = contents.map((marks, index) => {
    const page = { number: index + 1, count: contents.length };
    const foot = footers.flatMap((footer) => footerMarks(footer, inner, { ...setting, page }));
    return {
      width,
      height,
      marks: [
        ...marks.map((mark) => moved(mark, margin, margin)),
        ...foot.map((mark) => moved(mark, margin, height - marginBottom - footGrowth + footOffset)),
      ],
    };
  });
  return { pages, elements };
}

// notes of the footer at the left and at the right share the width, one line of each on a line
function footerMarks(footer: TagNode, width: number, setting: Setting): readonly Mark[] {
  const asFurniture = (mark: Mark): Mark => ({ ...mark, element: 'footer' });
  const notes = tagsIn(footer.children);
  const right = notes.filter((note) => note.attributes.align === 'right');
  const left = notes.filter((note) => note.attributes.align !== 'right');
  const rightWidth = right.length === 0 ? 0 : left.length === 0 ? width : width * 0.3;
  const gap = rightWidth > 0 && left.length > 0 ? 6 : 0;
  const set = (some: readonly TagNode[], own: number, x: number) => {
    let y = 0;
    return layOutBlocks(some, own, setting).flatMap((line) => {
      const marks = line.marks.map((mark) => asFurniture(moved(mark, x, y)));
      y += line.height;
      return marks;
    });
  };
  return [...set(left, width - rightWidth - gap, 0), ...set(right, rightWidth, width - rightWidth)];
}

function decimalSign(language: string): string {
  const known = /^[A-Za-z]{2,3}(-[A-Za-z0-9]{2,8})*$/.test(language) ? language : 'en';
  const parts = new Intl.NumberFormat(known).formatToParts(1.5);
  return parts.find((part) => part.type === 'decimal')?.value ?? '.';
}
