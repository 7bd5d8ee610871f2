import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readFonts } from '../../src/storage/fonts.ts';
import { faces } from '../../src/typesetting/fonts/faces.ts';
import { type Fonts, fontMetrics } from '../../src/typesetting/fonts/font-metrics.ts';
import { parseFont } from '../../src/typesetting/fonts/parse-font.ts';
import { type LaidOut, layOut } from '../../src/typesetting/layout/lay-out.ts';
import { markBox } from '../../src/typesetting/layout/mark-box.ts';
import type { Mark, Page } from '../../src/typesetting/layout/page.ts';
import { fillTemplate } from '../../src/typesetting/markup/fill-template.ts';
import { parseMarkup } from '../../src/typesetting/markup/parse-markup.ts';
import { anyDocument } from './any-document.ts';

const metrics = fontMetrics(Object.fromEntries(faces.map((face) => [face, parseFont(readFonts()[face])])) as Fonts);
const laidOut = (markup: string): LaidOut =>
  layOut(parseMarkup(fillTemplate(markup, 't', {}, {}), 't'), metrics, {}, 't');
const millimetre = 72 / 25.4;
type TextMark = Extract<Mark, { kind: 'text' }>;

const texts = (pages: readonly Page[]) =>
  pages.flatMap((page) => page.marks.filter((mark): mark is TextMark => mark.kind === 'text'));
const isRead = (mark: Mark): mark is TextMark & { readonly element: number } =>
  mark.kind === 'text' && typeof mark.element === 'number';
const textOf = (marks: readonly TextMark[]) => withoutSpaces(marks.map((mark) => mark.text).join(''));
const withoutSpaces = (text: string) => text.normalize('NFC').replace(/\s+/g, '');

function outsideTheFrame(page: Page): readonly Mark[] {
  const [side, foot] = [16 * millimetre - 0.5, 5 * millimetre];
  return page.marks.filter((mark) => {
    const box = markBox(mark);
    const bottom = page.height - (mark.element === 'footer' ? foot : 20 * millimetre - 0.5);
    return box.left < side || box.top < side || box.right > page.width - side || box.bottom > bottom;
  });
}

function overlapping(page: Page): readonly (readonly [string, string])[] {
  const marks = texts([page]);
  return marks.flatMap((one, place) =>
    marks.slice(place + 1).flatMap((other) => {
      const [a, b] = [markBox(one), markBox(other)];
      const slack = 0.1;
      const apart =
        a.right <= b.left + slack ||
        b.right <= a.left + slack ||
        a.bottom <= b.top + slack ||
        b.bottom <= a.top + slack;
      return apart ? [] : [[one.text, other.text] as const];
    }),
  );
}

const paragraphs = (count: number, words = 60) => `<p>${'word '.repeat(words)}</p>`.repeat(count);
const page = (inside: string) => `<document title="t" paper="letter"><h1>Title</h1>${inside}</document>`;
const pageOf = (pages: readonly Page[], text: string) =>
  pages.findIndex((each) => texts([each]).some((mark) => mark.text.includes(text)));

describe('any document', () => {
  for (const [kind, wordsMax] of [
    ['of usual texts', 12],
    ['with rows and columns taller than a page', 400],
  ] as const)
    test(`${kind} keeps every mark in the frame and off other text, and is read in its source's order`, () =>
      fc.assert(
        fc.property(anyDocument(wordsMax), (sample) => {
          const { pages } = laidOut(sample.markup);
          for (const each of pages) expect(outsideTheFrame(each)).toEqual([]);
          for (const each of pages) expect(overlapping(each)).toEqual([]);
          const read = texts(pages).filter(isRead);
          const inOrder = read.toSorted((one, other) => one.element - other.element);
          expect(textOf(inOrder)).toBe(withoutSpaces(sample.text));
          // columns taller than a page go on side by side on the next one
          if (wordsMax === 12 && !sample.markup.includes('<columns'))
            expect(textOf(read)).toBe(withoutSpaces(sample.text));
        }),
        { numRuns: wordsMax === 12 ? 40 : 12, endOnFailure: true },
      ));
});

describe('a page ends where it should', () => {
  test('a head never stands alone at the foot, whatever stands before it', () => {
    for (let lines = 30; lines < 70; lines += 1) {
      const { pages } = laidOut(page(`${`<p>x</p>`.repeat(lines)}<h2>The head</h2>${paragraphs(1)}`));
      const at = pageOf(pages, 'The head');
      expect(texts(pages.slice(at, at + 1)).at(-1)?.text).toMatch(/word/);
    }
  });
  test('a paragraph leaves and takes at least two lines', () => {
    for (let lines = 30; lines < 70; lines += 1) {
      const { pages } = laidOut(page(`<p>x</p>`.repeat(lines) + paragraphs(1)));
      for (const each of pages) expect(texts([each]).filter((mark) => mark.text.includes('word')).length).not.toBe(1);
    }
  });
  test('a page break after a head that keeps with its next is honoured', () => {
    const { pages } = laidOut(page('<p keep-with-next="yes">before</p><page-break/><p>after</p>'));
    expect([pageOf(pages, 'before'), pageOf(pages, 'after')]).toEqual([0, 1]);
  });
  test('breaks in a row or at the end leave no empty page', () => {
    expect(laidOut(page('<page-break/><page-break/><p>x</p><page-break/>')).pages).toHaveLength(2);
  });
  test('what is kept together goes to the next page together', () => {
    const { pages } = laidOut(
      page(`${paragraphs(15)}<keep><p>first</p>${'<p>middle</p>'.repeat(6)}<p>last</p></keep>`),
    );
    expect(pageOf(pages, 'first')).toBe(pageOf(pages, 'last'));
  });
  test('a kept group taller than a page goes on without leaving its head behind', () => {
    const { pages } = laidOut(page(`<keep><h2>Long</h2>${'<p>row</p>'.repeat(120)}</keep>`));
    expect(pages.length).toBe(3);
    expect(outsideTheFrame(pages[1] as Page)).toEqual([]);
  });
  test('signatures kept with their previous take its last lines along', () => {
    for (let lines = 40; lines < 60; lines += 1) {
      const { pages } = laidOut(
        page(
          `${'<p>line</p>'.repeat(lines)}<keep with-previous="yes"><p>Signatures</p><signature-field name="a" label="Customer" height="30"/></keep>`,
        ),
      );
      const at = pageOf(pages, 'Signatures');
      expect(texts(pages.slice(at, at + 1))[0]?.text).not.toBe('Signatures');
    }
  });
});

describe('a table', () => {
  const rows = (count: number) =>
    Array.from(
      { length: count },
      (_, index) => `<tr><td>row ${index}</td><td align="right">${index}.50<br/>kept</td></tr>`,
    ).join('');
  const table = (count: number) =>
    page(
      `<table widths="3 1" caption="c"><thead><tr><th scope="col">Head</th><th scope="col">Sum</th></tr></thead><tbody>${rows(count)}</tbody></table>`,
    );

  test('repeats its head on every page, and only the first one is read', () => {
    const { pages } = laidOut(table(80));
    expect(pages.length).toBeGreaterThan(3);
    for (const [index, each] of pages.entries()) {
      const heads = texts([each]).filter((mark) => mark.text === 'Head');
      expect(heads.map((mark) => (typeof mark.element === 'number' ? 'read' : mark.element))).toEqual([
        index === 0 ? 'read' : 'repeated',
      ]);
    }
  });
  test('tears no row', () => {
    const { pages } = laidOut(table(80));
    for (const each of pages) {
      const on = (text: string | RegExp) =>
        texts([each]).filter((mark) => isRead(mark) && mark.text.match(text)).length;
      expect(on(/\.50/)).toBe(on('kept'));
    }
  });
  test('sets decimal signs below each other, whole numbers and units too', () => {
    const column = (language: string, cells: readonly string[]) => {
      const { pages } = laidOut(
        `<document title="t" lang="${language}"><h1>T</h1><table widths="1 1" caption="c"><tbody>${cells.map((cell) => `<tr><td>x</td><td align="decimal">${cell}</td></tr>`).join('')}</tbody></table></document>`,
      );
      const sign = language === 'de' ? ',' : '.';
      return texts(pages)
        .filter((mark) => /\d/.test(mark.text))
        .map(
          (mark) => mark.x + metrics.width(mark.text.split(sign)[0]?.replace(/ .*/, '') ?? '', mark.face, mark.size),
        );
    };
    for (const [language, cells] of [
      ['en', ['12.5 V', '1,234.75', '7']],
      ['de', ['12,5 V', '1.234,75', '7']],
    ] as const) {
      const [first, ...others] = column(language, cells);
      for (const other of others) expect(other).toBeCloseTo(first ?? 0, 1);
    }
  });
  test('without rows is its head alone', () => {
    expect(texts(laidOut(table(0)).pages).map((mark) => mark.text)).toEqual(['Title', 'Head', 'Sum']);
  });
});

describe('text', () => {
  const lines = (inside: string) =>
    texts(laidOut(page(`<p>${inside}</p>`)).pages)
      .slice(1)
      .map((mark) => mark.text);
  test('is set with the kerning it is measured with', () => {
    // from the font's own tables: the pairs A-V, V-A, A-T, T-A and A-R tighten the word
    const apart = [...'AVATAR'].reduce((sum, sign) => sum + metrics.width(sign, 'sans', 100), 0);
    expect(apart).toBeCloseTo((8278 / 2048) * 100, 3);
    expect(metrics.width('AVATAR', 'sans', 100)).toBeCloseTo((7698 / 2048) * 100, 3);
  });
  test('is composed, loses soft hyphens, and shared signs are written one way', () => {
    expect(lines('re&#xAD;sist 10 k&#x2126; Łu&#xFB01;a Zoe&#x308; a&#x200B;b')).toEqual([
      'resist 10 k\u03a9 Łufia Zo\u00eb ab',
    ]);
  });
  test('breaks no line between an opening bracket and the bold word after it', () => {
    for (let fill = 60; fill < 110; fill += 1) {
      const { pages } = laidOut(page(`<p>${'x'.repeat(40)} ${'y'.repeat(fill - 40)} (<b>bold</b>) end</p>`));
      const [before, bold] = texts(pages).filter((mark) => mark.text === 'bold' || mark.text.endsWith('('));
      expect(before?.y).toBe(bold?.y);
    }
  });
  test('keeps its space where a line ends at one, so that a listener hears two words', () => {
    expect(
      lines('word '.repeat(60))
        .slice(0, -1)
        .every((line) => line.endsWith(' ')),
    ).toBe(true);
    expect(lines('one<br/>two')).toEqual(['one ', 'two']);
  });
  test('divides a word that is longer than its line, and an accent stays with its letter', () => {
    const parts = lines('x&#x301;&#x302;'.repeat(200));
    expect(parts.length).toBeGreaterThan(1);
    for (const part of parts) expect(part).toMatch(/^x/);
  });
  test('a sign that the typewriter face lacks is lent by the plain face', () => {
    const marks = texts(laidOut(page('<p><m>AB 🂡 9</m></p>')).pages).slice(1);
    expect(metrics.has('🂡', 'mono')).toBe(false);
    expect(marks.map((mark) => [mark.text.trim(), mark.face])).toEqual([
      ['AB', 'mono'],
      ['🂡', 'sans'],
      ['9', 'mono'],
    ]);
  });
});

describe('a figure', () => {
  const figure = (inside: string, width = 40) =>
    laidOut(page(`<figure alt="a" width="${width}" height="20">${inside}</figure>`)).pages[0]?.marks.slice(1) ?? [];
  test('wider than the column is made smaller whole', () => {
    const [line] = figure('<line x1="0" y1="10" x2="400" y2="10"/>', 400);
    expect(line?.kind === 'line' && line.toX - line.x).toBeCloseTo(612 - 32 * millimetre, 3);
  });
  test('a label too long for its width is set smaller, then cut', () => {
    const [small, cut] = figure(
      `<label x="0" y="5" width="20">a longish label</label><label x="0" y="15" width="20">${'very '.repeat(20)}long</label>`,
    );
    expect(small).toMatchObject({ text: 'a longish label' });
    expect(cut?.kind === 'text' && cut.text.endsWith('…') && cut.size).toBe(5);
    for (const mark of [small, cut])
      expect(mark?.kind === 'text' && mark.width).toBeLessThanOrEqual(20 * millimetre + 0.01);
  });
  test('strokes of a pen are lines through their points', () => {
    expect(figure('<polyline points="1,2 3,4 5,2" weight="0.8"/>')[0]).toMatchObject({ kind: 'polyline', weight: 0.8 });
  });
});
