import { drawSvgPath, rgb } from 'pdf-lib';
import type { Face } from '../fonts/faces.ts';
import type { Mark, Page, Place } from '../layout/page.ts';
import type { StructureElement } from '../layout/structure.ts';
import { digits } from './digits.ts';

/** What a page's content needs: the operand that shows a text, and the resource names of faces and pictures. */
export type Resources = {
  readonly show: (text: string, face: Face) => string;
  readonly pictureName: (name: string) => string;
};
/** A page's operators, and the element that each of its marked pieces belongs to, by its number on the page (MCID). */
export type Content = { readonly operators: string; readonly owners: readonly number[] };

const n = digits;

/**
 * The operators of a page: marks of one element stand together in one marked piece, all else is an artifact (ISO 32000-1, 14.6 and 14.8.2.2).
 * @param page finished marks
 * @param elements the structure's elements by number
 * @param resources fonts and pictures
 */
export function drawContent(page: Page, elements: readonly StructureElement[], resources: Resources): Content {
  const lines: string[] = [];
  const owners: number[] = [];
  let open: Place | null = null;
  for (const mark of page.marks) {
    if (mark.kind === 'field') continue;
    if (open === null || open !== mark.element) {
      if (open !== null) lines.push('EMC');
      if (typeof mark.element === 'number')
        lines.push(`/${elements[mark.element]?.role ?? 'P'} <</MCID ${owners.push(mark.element) - 1}>> BDC`);
      else lines.push(artifact(mark.element));
      open = mark.element;
    }
    lines.push(drawMark(mark, page.height, resources));
  }
  if (open !== null) lines.push('EMC');
  return { operators: lines.join('\n'), owners };
}

function artifact(kind: Exclude<Place, number>): string {
  if (kind === 'footer') return '/Artifact <</Type /Pagination /Subtype /Footer>> BDC';
  return kind === 'repeated' ? '/Artifact <</Type /Pagination>> BDC' : '/Artifact <</Type /Layout>> BDC';
}

function drawMark(mark: Mark, pageHeight: number, resources: Resources): string {
  const y = pageHeight - mark.y;
  switch (mark.kind) {
    case 'text': {
      const operand = resources.show(mark.text, mark.face);
      return `BT /${mark.face} ${n(mark.size)} Tf ${n(mark.x)} ${n(y)} Td ${operand} TJ ET`;
    }
    case 'line': {
      const to = `${n(mark.toX)} ${n(pageHeight - mark.toY)}`;
      return `q ${n(mark.weight)} w ${colour(mark.colour)} RG ${n(mark.x)} ${n(y)} m ${to} l S Q`;
    }
    case 'rect': {
      const box = `${n(mark.x)} ${n(y - mark.height)} ${n(mark.width)} ${n(mark.height)} re`;
      return `q ${painted(box, mark.weight, mark.fill)} Q`;
    }
    case 'circle':
      return `q ${painted(circle(mark.x, y, mark.radius), mark.weight, mark.fill)} Q`;
    case 'polyline': {
      const steps = mark.steps.map(([right, down]) => `${n(mark.x + right)} ${n(y - down)} l`).join(' ');
      // a single point is drawn as a dot by its round ends
      const line = `${n(mark.x)} ${n(y)} m ${steps === '' ? `${n(mark.x)} ${n(y)} l` : steps}`;
      return `q 1 J 1 j ${n(mark.weight)} w 0 0 0 RG ${line} S Q`;
    }
    case 'path':
      return drawPath(mark, y);
    case 'image': {
      const place = `${n(mark.width)} 0 0 ${n(mark.height)} ${n(mark.x)} ${n(y - mark.height)} cm`;
      return `q ${place} /${resources.pictureName(mark.name)} Do Q`;
    }
    default:
      return '';
  }
}

function colour(hex: string): string {
  return [1, 3, 5].map((from) => n(Number.parseInt(hex.slice(from, from + 2), 16) / 255)).join(' ');
}

function painted(outline: string, weight: number, fill: string): string {
  const stroke = weight > 0 ? `${n(weight)} w 0 0 0 RG ` : '';
  const inside = fill === '' ? '' : `${colour(fill)} rg `;
  const paint = fill === '' ? (weight > 0 ? 'S' : 'n') : weight > 0 ? 'B' : 'f';
  return `${stroke}${inside}${outline} ${paint}`;
}

// four curves; the handle length 4/3·(√2 − 1) brings them within 0.03 % of a circle
function circle(x: number, y: number, radius: number): string {
  const handle = (radius * 4 * (Math.SQRT2 - 1)) / 3;
  const at = (right: number, up: number) => `${n(x + right)} ${n(y + up)}`;
  return [
    `${at(radius, 0)} m`,
    `${at(radius, handle)} ${at(handle, radius)} ${at(0, radius)} c`,
    `${at(-handle, radius)} ${at(-radius, handle)} ${at(-radius, 0)} c`,
    `${at(-radius, -handle)} ${at(-handle, -radius)} ${at(0, -radius)} c`,
    `${at(handle, -radius)} ${at(radius, -handle)} ${at(radius, 0)} c h`,
  ].join(' ');
}

function drawPath(mark: Extract<Mark, { kind: 'path' }>, y: number): string {
  if (mark.fill === '' && mark.weight <= 0) return '';
  const black = rgb(0, 0, 0);
  const operators = drawSvgPath(mark.data, {
    x: mark.x,
    y,
    scale: mark.scale,
    color: mark.fill === '' ? undefined : shade(mark.fill),
    borderColor: mark.weight > 0 ? black : undefined,
    borderWidth: mark.weight > 0 ? mark.weight / mark.scale : 0,
  });
  const frame = `${n(mark.x)} ${n(y - mark.height)} ${n(mark.width)} ${n(mark.height)} re W n`;
  return `q ${frame} ${operators.map(String).join(' ')} Q`;
}

function shade(hex: string) {
  const part = (from: number) => Number.parseInt(hex.slice(from, from + 2), 16) / 255;
  return rgb(part(1), part(3), part(5));
}
