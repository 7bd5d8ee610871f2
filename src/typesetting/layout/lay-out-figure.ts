import { cleanText } from '../markup/clean-text.ts';
import { type TagNode, tagsIn } from '../markup/document-tree.ts';
import { type Block, block } from './block.ts';
import { millimetre, sizes } from './grid.ts';
import { markBox } from './mark-box.ts';
import type { Mark } from './page.ts';
import type { Setting } from './setting.ts';
import { numbersIn, spaceBefore } from './style-of.ts';

const fills: Readonly<Record<string, string>> = { none: '', black: '#000000', light: '#e6e6e6', white: '#ffffff' };
// how far a shape may stand over its figure's frame, in points: line ends and roundings
const tolerance = 1;
const labelSizeMin = 5;

/** What the shapes of one figure share: the size of a millimetre on paper, the frame in points. */
type Frame = { readonly unit: number; readonly width: number; readonly height: number };

/**
 * A figure of lines, boxes, circles, paths and labels at fixed millimetres; one wider than its column or taller than a page is made smaller whole.
 * @param node the figure
 * @param width points
 * @param setting widths of text, structure
 * @throws Problem for a shape outside the figure's frame
 */
export function layOutFigure(node: TagNode, width: number, setting: Setting): Block {
  const asked = {
    width: Number(node.attributes.width) * millimetre,
    height: Number(node.attributes.height) * millimetre,
  };
  const shrunk = Math.min(1, width / asked.width, setting.room / asked.height);
  const frame = { unit: millimetre * shrunk, width: asked.width * shrunk, height: asked.height * shrunk };
  const marks = tagsIn(node.children).flatMap((child): readonly Mark[] => {
    const mark = child.tag === 'label' ? label(child, frame, setting) : shape(child, frame);
    if (mark === null) return [];
    if (child.tag === 'path') checkPath(child, setting);
    if (child.tag !== 'label') checkInside(mark, child, frame, setting);
    return [{ ...mark, element: setting.placeOf(node) }];
  });
  return block({ height: frame.height, marks, spaceBefore: spaceBefore(node) });
}

function shape(child: TagNode, frame: Frame): Mark {
  const at = (name: string) => Number(child.attributes[name] ?? 0) * frame.unit;
  const weight = Number(child.attributes.weight ?? 0.6);
  const fill = fills[child.attributes.fill ?? 'none'] ?? '';
  const element = 'layout';
  switch (child.tag) {
    case 'line':
      return {
        kind: 'line',
        x: at('x1'),
        y: at('y1'),
        toX: at('x2'),
        toY: at('y2'),
        weight,
        colour: '#000000',
        element,
      };
    case 'rect':
      return { kind: 'rect', x: at('x'), y: at('y'), width: at('width'), height: at('height'), weight, fill, element };
    case 'circle':
      return { kind: 'circle', x: at('cx'), y: at('cy'), radius: at('r'), weight, fill, element };
    case 'polyline':
      return polyline(numbersIn(child.attributes.points) ?? [], weight, frame);
    default: {
      const scale = Number(child.attributes.scale ?? 1) * frame.unit;
      const data = child.attributes.d ?? '';
      return { kind: 'path', x: 0, y: 0, data, scale, width: frame.width, height: frame.height, weight, fill, element };
    }
  }
}

function polyline(numbers: readonly number[], weight: number, frame: Frame): Mark {
  const points: (readonly [number, number])[] = [];
  for (let index = 0; index + 1 < numbers.length; index += 2)
    points.push([(numbers[index] ?? 0) * frame.unit, (numbers[index + 1] ?? 0) * frame.unit]);
  const [x, y] = points[0] ?? [0, 0];
  const steps = points.slice(1).map(([right, down]) => [right - x, down - y] as const);
  return { kind: 'polyline', x, y, steps, weight, element: 'layout' };
}

// a label that is too long for its place is set smaller, and at last cut: the text alternative holds it whole
function label(child: TagNode, frame: Frame, setting: Setting): Mark | null {
  const text = cleanText(child.children.map((each) => ('text' in each ? each.text : '')).join('')).trim();
  if (text === '') return null;
  const named = child.attributes.size === 'text' || child.attributes.size === 'head' ? child.attributes.size : 'note';
  const face = child.attributes.weight === 'bold' ? 'condensedBold' : 'condensed';
  const align = child.attributes.align ?? 'left';
  const [atX, y] = [Number(child.attributes.x ?? 0) * frame.unit, Number(child.attributes.y ?? 0) * frame.unit];
  const [toLeft, toRight] = [Math.max(0, atX), Math.max(0, frame.width - atX)];
  const inFrame = align === 'left' ? toRight : align === 'right' ? toLeft : 2 * Math.min(toLeft, toRight);
  const asked = child.attributes.width === undefined ? inFrame : Number(child.attributes.width) * frame.unit;
  const free = Math.min(inFrame, asked);
  const widthAt = (some: string, size: number) => setting.metrics.width(some, face, size);
  const usual = sizes[named].size * Math.min(1, frame.unit / millimetre);
  const size = Math.min(usual, Math.max(labelSizeMin, (usual * free) / widthAt(text, usual)));
  const shown = cut(text, (some) => widthAt(some, size) <= free + 0.01);
  const width = widthAt(shown, size);
  const x = atX - (align === 'right' ? width : align === 'centre' ? width / 2 : 0);
  const top = Math.min(Math.max(y, size * 0.76), frame.height - size * 0.24);
  return { kind: 'text', x, y: top, text: shown, face, size, width, element: 'layout' };
}

function cut(text: string, fits: (text: string) => boolean): string {
  if (fits(text)) return text;
  const characters = [...text];
  while (characters.length > 1 && !fits(`${characters.join('').trimEnd()}…`)) characters.pop();
  return `${characters.join('').trimEnd()}…`;
}

function checkInside(mark: Mark, node: TagNode, frame: Frame, setting: Setting): void {
  const box = markBox(mark);
  const outside =
    box.left < -tolerance ||
    box.top < -tolerance ||
    box.right > frame.width + tolerance ||
    box.bottom > frame.height + tolerance;
  if (outside)
    throw setting.problem(
      `The <${node.tag}> stands outside its figure.`,
      node,
      'Give the figure a larger width and height, or move the shape; both count in millimetres.',
    );
}

function checkPath(node: TagNode, setting: Setting): void {
  const data = node.attributes.d ?? '';
  if (!/^\s*[Mm][\sMmLlHhVvCcSsAaZz\d.,eE+-]*$/.test(data))
    throw setting.problem(
      'The path data is not drawn: it starts with M and may hold M, L, H, V, C, S, A and Z.',
      node,
      'Save the drawing with cubic curves and without Q and T.',
    );
}
