import { expect, test } from 'vitest';
import { readFonts } from '../../src/storage/fonts.ts';
import { faces } from '../../src/typesetting/fonts/faces.ts';
import { type Fonts, fontMetrics } from '../../src/typesetting/fonts/font-metrics.ts';
import { parseFont } from '../../src/typesetting/fonts/parse-font.ts';
import { layOut } from '../../src/typesetting/layout/lay-out.ts';
import type { Mark, Page } from '../../src/typesetting/layout/page.ts';
import { parseMarkup } from '../../src/typesetting/markup/parse-markup.ts';

const metrics = fontMetrics(Object.fromEntries(faces.map((face) => [face, parseFont(readFonts()[face])])) as Fonts);
const pagesOf = (inside: string) =>
  layOut(parseMarkup(`<document title="t" paper="letter"><h1>Title</h1>${inside}</document>`, 't'), metrics, {}, 'en')
    .pages;
const texts = (page: Page | undefined) =>
  (page?.marks ?? []).filter((mark): mark is Extract<Mark, { kind: 'text' }> => mark.kind === 'text');
const topOf = (page: Page | undefined) => Math.min(...texts(page).map((mark) => mark.y));

test('a blank that falls to the top of a page is left out, so that every page begins at one height', () => {
  const full = '<p>word</p>'.repeat(200);
  const plain = pagesOf(`${full}<page-break/><p>next</p>`);
  const expected = topOf(plain.at(-1));
  for (const lines of [1, 2, 5]) {
    const broken = pagesOf(`${full}<page-break/><space lines="${lines}"/><p>next</p>`);
    expect([lines, topOf(broken.at(-1))]).toEqual([lines, expected]);
  }
  // wherever the blank falls in running text
  for (let count = 40; count < 70; count += 1) {
    const pages = pagesOf(`${'<p>word</p>'.repeat(count)}<space lines="3"/>${'<p>word</p>'.repeat(20)}`);
    for (const page of pages.slice(1)) expect([count, topOf(page)]).toEqual([count, expected]);
  }
});

test('column headings do not count when decimal signs are put below each other', () => {
  const rightEdges = (heading: string) =>
    texts(
      pagesOf(
        `<table widths="1 1" caption="c"><thead><tr><th>What</th><th align="decimal">${heading}</th></tr></thead>` +
          `<tbody><tr><th>Part</th><th align="decimal">${heading}</th></tr>` +
          '<tr><td>a</td><td align="decimal">12.5</td></tr><tr><td>b</td><td align="decimal">7</td></tr></tbody></table>',
      )[0],
    )
      .filter((mark) => ['12.5', '7'].includes(mark.text))
      .map((mark) => Math.round(mark.x * 100) / 100);
  expect(rightEdges('Volts')).toHaveLength(2);
  // a heading with decimals of its own, wider than those of the cells, moves nothing
  expect(rightEdges('1.123456789')).toEqual(rightEdges('Volts'));
});
