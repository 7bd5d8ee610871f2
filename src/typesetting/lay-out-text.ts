import LineBreaker from 'linebreak';
import type { TreeNode } from './document-tree.ts';
import type { Metrics } from './font-metrics.ts';
import type { Face, Mark } from './page.ts';

export type TextStyle = {
  readonly face: Face;
  readonly size: number;
  readonly leading: number;
  readonly align: 'left' | 'right' | 'centre';
  readonly tag: string | null;
};
/** A stretch of text in one face; `null` text is a forced line end. */
type Run = { readonly text: string | null; readonly face: Face; readonly size: number };
export type TextLine = { readonly marks: readonly Mark[]; readonly height: number };

const boldOf: Readonly<Record<Face, Face>> = {
  sans: 'sansBold',
  sansBold: 'sansBold',
  condensed: 'condensedBold',
  condensedBold: 'condensedBold',
  mono: 'mono',
};

/** Text without the signs that paper cannot show: composed, no soft hyphens, white space folded. */
export function cleanText(text: string): string {
  return text
    .normalize('NFC')
    .replace(/\u00ad/g, '')
    .replace(/\u2126/g, 'Ω')
    .replace(/\ufb01/g, 'fi')
    .replace(/[ \t\r\n]+/g, ' ');
}

function runsOf(nodes: readonly TreeNode[], style: { readonly face: Face; readonly size: number }): readonly Run[] {
  return nodes.flatMap((node): readonly Run[] => {
    if ('text' in node) return [{ text: cleanText(node.text), ...style }];
    if (node.tag === 'br') return [{ text: null, ...style }];
    if (node.tag === 'page-number') return [{ text: '\u{e000}', ...style }];
    if (node.tag === 'page-count') return [{ text: '\u{e001}', ...style }];
    const face = node.tag === 'b' ? boldOf[style.face] : node.tag === 'm' ? 'mono' : style.face;
    return runsOf(node.children, {
      face,
      size: node.tag === 'small' || node.tag === 'm' ? style.size - (node.tag === 'm' ? 0.5 : 1.5) : style.size,
    });
  });
}

type Piece = { readonly text: string; readonly face: Face; readonly size: number; readonly width: number };

function lineMarks(pieces: readonly Piece[], width: number, style: TextStyle): TextLine {
  const kept = [...pieces];
  const last = kept.at(-1);
  const trimmed = last === undefined ? 0 : last.width;
  const used =
    kept.reduce((sum, piece) => sum + piece.width, 0) - (last !== undefined && last.text.trim() === '' ? trimmed : 0);
  let x = style.align === 'right' ? width - used : style.align === 'centre' ? (width - used) / 2 : 0;
  const marks: Mark[] = [];
  for (const piece of kept) {
    const before = marks.at(-1);
    if (before?.kind === 'text' && before.face === piece.face && before.size === piece.size)
      marks[marks.length - 1] = { ...before, text: before.text + piece.text };
    else
      marks.push({
        kind: 'text',
        x,
        y: style.leading * 0.72,
        text: piece.text,
        face: piece.face,
        size: piece.size,
        tag: style.tag,
      });
    x += piece.width;
  }
  return {
    marks: marks
      .map((mark) => (mark.kind === 'text' ? { ...mark, text: mark.text.trimEnd() } : mark))
      .filter((mark) => mark.kind !== 'text' || mark.text !== ''),
    height: style.leading,
  };
}

function fitting(word: string, face: Face, size: number, width: number, metrics: Metrics): readonly string[] {
  const parts: string[] = [];
  let part = '';
  for (const sign of word) {
    if (part !== '' && metrics.width(part + sign, face, size) > width) {
      parts.push(part);
      part = '';
    }
    part += sign;
  }
  return [...parts, part];
}

/**
 * Inline nodes set into lines of a width, broken by the Unicode rules (UAX 14, package `linebreak`); a word longer than the line is divided.
 * @param nodes text and inline tags
 * @param width points
 * @param style face, size, leading, alignment
 * @param metrics widths of text
 */
export function layOutText(
  nodes: readonly TreeNode[],
  width: number,
  style: TextStyle,
  metrics: Metrics,
): readonly TextLine[] {
  const lines: TextLine[] = [];
  let line: Piece[] = [];
  let used = 0;
  const end = () => {
    lines.push(lineMarks(line, width, style));
    line = [];
    used = 0;
  };
  const runs = runsOf(nodes, style);
  for (const [index, run] of runs.entries()) {
    if (run.text === null) {
      end();
      continue;
    }
    const text = index === 0 || runs[index - 1]?.text === null ? run.text.trimStart() : run.text;
    const breaker = new LineBreaker(text);
    let from = 0;
    for (let place = breaker.nextBreak(); place !== null; place = breaker.nextBreak()) {
      const word = text.slice(from, place.position);
      from = place.position;
      for (const part of measure(word.trimEnd(), run) > width
        ? fitting(word, run.face, run.size, width, metrics)
        : [word]) {
        if (used > 0 && used + measure(part.trimEnd(), run) > width + 0.01) end();
        if (used === 0 && part.trim() === '') continue;
        const pieceWidth = measure(part, run);
        line.push({ text: part, face: run.face, size: run.size, width: pieceWidth });
        used += pieceWidth;
      }
    }
  }
  if (line.length > 0 || lines.length === 0) end();
  return lines;

  function measure(text: string, run: Run): number {
    return metrics.width(text.replace(/\u{e000}|\u{e001}/gu, '0'), run.face, run.size);
  }
}
