import LineBreaker from 'linebreak';
import type { Face } from '../fonts/faces.ts';
import type { Metrics } from '../fonts/font-metrics.ts';
import { cleanText } from '../markup/clean-text.ts';
import type { TreeNode } from '../markup/document-tree.ts';
import type { Mark, Place } from './page.ts';

export type TextStyle = {
  readonly face: Face;
  readonly size: number;
  readonly leading: number;
  readonly align: 'left' | 'right' | 'centre';
  readonly element: Place;
};
export type TextLine = { readonly marks: readonly Mark[]; readonly height: number; readonly endsAtSpace: boolean };
/** What text needs of its surroundings: widths, and the number of the page where a footer prints it. */
export type TextSetting = {
  readonly metrics: Metrics;
  readonly page?: { readonly number: number; readonly count: number };
};

/** A stretch of text in one face; `null` text is a forced line end. */
type Run = { readonly text: string | null; readonly face: Face; readonly size: number };
type Piece = { readonly text: string; readonly face: Face; readonly size: number; readonly width: number };

const boldOf: Readonly<Record<Face, Face>> = {
  sans: 'sansBold',
  sansBold: 'sansBold',
  condensed: 'condensedBold',
  condensedBold: 'condensedBold',
  mono: 'mono',
};

/**
 * Inline nodes set into lines of a width, broken by the Unicode rules (UAX 14, package `linebreak`); a word longer than the line is divided.
 * @param nodes text and inline tags
 * @param width points
 * @param style face, size, leading, alignment, place in the structure
 * @param setting widths of text, page number
 */
export function layOutText(
  nodes: readonly TreeNode[],
  width: number,
  style: TextStyle,
  setting: TextSetting,
): readonly TextLine[] {
  const lines: TextLine[] = [];
  for (const runs of linesAsked(runsOf(nodes, style, setting))) {
    let line: readonly Piece[] = [];
    for (const unit of unitsOf(runs, setting.metrics)) {
      const longer = appended(line, unit, setting.metrics);
      if (usedWidth(longer, setting.metrics) <= width + 0.01) {
        line = longer;
        continue;
      }
      if (line.length > 0) lines.push(lineMarks(line, width, style, setting.metrics));
      const parts = divided(withoutLeadingSpace(unit, setting.metrics), width, setting.metrics);
      for (const part of parts.slice(0, -1)) lines.push(lineMarks(part, width, style, setting.metrics));
      line = parts.at(-1) ?? [];
    }
    // where the author ended a line, a listener hears two words, not one
    lines.push({ ...lineMarks(line, width, style, setting.metrics), endsAtSpace: true });
  }
  return lines.map((line, index) => (index < lines.length - 1 ? spaced(line) : line));
}

function runsOf(
  nodes: readonly TreeNode[],
  style: { readonly face: Face; readonly size: number },
  setting: TextSetting,
): readonly Run[] {
  const { face, size } = style;
  return nodes.flatMap((node): readonly Run[] => {
    if ('text' in node) return inKnownSigns(cleanText(node.text), face, size, setting.metrics);
    if (node.tag === 'br') return [{ text: null, face, size }];
    if (node.tag === 'page-number') return [{ text: String(setting.page?.number ?? 1), face, size }];
    if (node.tag === 'page-count') return [{ text: String(setting.page?.count ?? 1), face, size }];
    const smaller = node.tag === 'small' ? 1.5 : node.tag === 'm' ? 0.5 : 0;
    const inner = node.tag === 'b' ? boldOf[face] : node.tag === 'm' ? 'mono' : face;
    return runsOf(node.children, { face: inner, size: size - smaller }, setting);
  });
}

// the plain face has every character that a document may hold: it lends those that another face lacks
function inKnownSigns(text: string, face: Face, size: number, metrics: Metrics): readonly Run[] {
  const runs: { text: string; face: Face; size: number }[] = [];
  for (const character of text) {
    const own = metrics.has(character, face) ? face : 'sans';
    const last = runs.at(-1);
    if (last?.face === own) last.text += character;
    else runs.push({ text: character, face: own, size });
  }
  return runs;
}

// runs between forced line ends, white space folded over their borders
function linesAsked(runs: readonly Run[]): readonly (readonly Run[])[] {
  const lines: Run[][] = [[]];
  let afterSpace = true;
  for (const run of runs) {
    if (run.text === null) {
      lines.push([]);
      afterSpace = true;
      continue;
    }
    const text: string = afterSpace ? run.text.replace(/^ +/, '') : run.text;
    if (text === '') continue;
    const line = lines.at(-1) ?? [];
    const last = line.at(-1);
    if (last !== undefined && last.face === run.face && last.size === run.size)
      line[line.length - 1] = { ...last, text: `${last.text ?? ''}${text}` };
    else line.push({ ...run, text });
    afterSpace = text.endsWith(' ');
  }
  return lines;
}

// stretches between two places where a line may end; such a stretch may hold several faces
function unitsOf(runs: readonly Run[], metrics: Metrics): readonly (readonly Piece[])[] {
  const text = runs.map((run) => run.text ?? '').join('');
  const breaker = new LineBreaker(text);
  const units: (readonly Piece[])[] = [];
  let from = 0;
  let runIndex = 0;
  let runFrom = 0;
  for (let opportunity = breaker.nextBreak(); opportunity !== null; opportunity = breaker.nextBreak()) {
    const unit: Piece[] = [];
    while (from < opportunity.position) {
      const run = runs[runIndex];
      if (run === undefined) break;
      const runEnd = runFrom + (run.text ?? '').length;
      const to = Math.min(runEnd, opportunity.position);
      if (to > from) unit.push(piece(text.slice(from, to), run.face, run.size, metrics));
      from = to;
      if (to === runEnd) {
        runIndex += 1;
        runFrom = runEnd;
      }
    }
    units.push(unit);
  }
  return units;
}

function piece(text: string, face: Face, size: number, metrics: Metrics): Piece {
  return { text, face, size, width: metrics.width(text, face, size) };
}

function appended(line: readonly Piece[], unit: readonly Piece[], metrics: Metrics): readonly Piece[] {
  const last = line.at(-1);
  const [first, ...rest] = unit;
  if (last === undefined || first === undefined || last.face !== first.face || last.size !== first.size)
    return [...line, ...unit];
  return [...line.slice(0, -1), piece(last.text + first.text, last.face, last.size, metrics), ...rest];
}

function withoutLeadingSpace(unit: readonly Piece[], metrics: Metrics): readonly Piece[] {
  const [first, ...rest] = unit;
  if (first === undefined || !first.text.startsWith(' ')) return unit;
  const text = first.text.trimStart();
  return text === '' ? rest : [piece(text, first.face, first.size, metrics), ...rest];
}

// spaces at the end of a line take no room
function trimmedEnd(line: readonly Piece[], metrics: Metrics): readonly Piece[] {
  const last = line.at(-1);
  if (last === undefined || !last.text.endsWith(' ')) return line;
  const text = last.text.replace(/ +$/, '');
  const rest = line.slice(0, -1);
  return text === '' ? trimmedEnd(rest, metrics) : [...rest, piece(text, last.face, last.size, metrics)];
}

function usedWidth(line: readonly Piece[], metrics: Metrics): number {
  return trimmedEnd(line, metrics).reduce((sum, each) => sum + each.width, 0);
}

function divided(unit: readonly Piece[], width: number, metrics: Metrics): readonly (readonly Piece[])[] {
  const parts: (readonly Piece[])[] = [];
  let part: readonly Piece[] = [];
  if (usedWidth(unit, metrics) <= width + 0.01) return [unit];
  // a letter keeps the accents that follow it
  for (const each of unit)
    for (const character of each.text.match(/.\p{M}*/gsu) ?? []) {
      const longer = appended(part, [piece(character, each.face, each.size, metrics)], metrics);
      if (part.length > 0 && usedWidth(longer, metrics) > width + 0.01) {
        parts.push(part);
        part = [piece(character, each.face, each.size, metrics)];
      } else part = longer;
    }
  return [...parts, part];
}

// who hears or copies the text needs the space that the end of the line stands for; it takes no room
function spaced(line: TextLine): TextLine {
  const last = line.marks.at(-1);
  if (last?.kind !== 'text' || !line.endsAtSpace) return line;
  return { ...line, marks: [...line.marks.slice(0, -1), { ...last, text: `${last.text} ` }] };
}

function lineMarks(line: readonly Piece[], width: number, style: TextStyle, metrics: Metrics): TextLine {
  const kept = trimmedEnd(line, metrics);
  const used = kept.reduce((sum, each) => sum + each.width, 0);
  let x = style.align === 'right' ? width - used : style.align === 'centre' ? (width - used) / 2 : 0;
  const marks: Mark[] = [];
  for (const { text, face, size, width: own } of kept) {
    marks.push({ kind: 'text', x, y: style.leading * 0.72, text, face, size, width: own, element: style.element });
    x += own;
  }
  return { marks, height: style.leading, endsAtSpace: line.at(-1)?.text.endsWith(' ') ?? true };
}
