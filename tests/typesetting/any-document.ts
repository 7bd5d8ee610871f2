import fc from 'fast-check';
import { escaped } from './print.ts';

/** Some markup and the text that a reader must find in it, without its spaces. */
export type Sample = { readonly markup: string; readonly text: string };

const letters = [
  ...'abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789-/.,;:()&<>"\'{}\\αβγδεζΩЖщЮйłŻéếơứ…–✓≤⌀',
];
const word = fc.oneof(
  { weight: 12, arbitrary: fc.string({ unit: fc.constantFrom(...letters), minLength: 1, maxLength: 12 }) },
  { weight: 1, arbitrary: fc.string({ unit: fc.constantFrom(...letters), minLength: 60, maxLength: 300 }) },
);
const words = (max: number) =>
  fc
    .array(word, { minLength: 1, maxLength: max })
    .map((some) => ({ markup: escaped(some.join(' ')), text: some.join('') }));

const inline = (max: number): fc.Arbitrary<Sample> =>
  fc
    .array(fc.tuple(fc.constantFrom('', 'b', 'm', 'small', 'br'), words(max)), { minLength: 1, maxLength: 3 })
    .map((parts) => ({
      markup: parts
        .map(([tag, some]) =>
          tag === '' ? some.markup : tag === 'br' ? `${some.markup}<br/>` : `<${tag}>${some.markup}</${tag}>`,
        )
        .join(' '),
      text: parts.map(([, some]) => some.text).join(''),
    }));

const joined = (some: readonly Sample[], between = ''): Sample => ({
  markup: some.map((each) => each.markup).join(between),
  text: some.map((each) => each.text).join(''),
});

const paragraph = (max: number) =>
  fc
    .record({
      inside: inline(max),
      size: fc.constantFrom('note', 'text', 'head', 'title'),
      face: fc.constantFrom('sans', 'condensed', 'mono'),
      weight: fc.constantFrom('normal', 'bold'),
      align: fc.constantFrom('left', 'right', 'centre'),
      keep: fc.constantFrom('yes', 'no'),
    })
    .map(({ inside, size, face, weight, align, keep }) => ({
      markup: `<p size="${size}" face="${face}" weight="${weight}" align="${align}" keep-with-next="${keep}" space-before="1">${inside.markup}</p>`,
      text: inside.text,
    }));

const head = words(8).map((some) => ({ markup: `<h2>${some.markup}</h2>`, text: some.text }));

const list = fc
  .record({
    kind: fc.constantFrom('bullet', 'number', 'dash'),
    items: fc.array(inline(15), { minLength: 1, maxLength: 6 }),
  })
  .map(({ kind, items }) => ({
    markup: `<list kind="${kind}">${items.map((item) => `<item>${item.markup}</item>`).join('')}</list>`,
    text: items
      .map((item, place) => `${kind === 'number' ? `${place + 1}.` : kind === 'dash' ? '–' : '•'}${item.text}`)
      .join(''),
  }));

const facts = fc
  .record({
    columns: fc.integer({ min: 1, max: 4 }),
    some: fc.array(fc.tuple(words(3), inline(6)), { minLength: 1, maxLength: 9 }),
  })
  .map(({ columns, some }) => ({
    markup: `<facts columns="${columns}">${some.map(([name, value]) => `<fact name="${name.markup}">${value.markup}</fact>`).join('')}</facts>`,
    text: some.map(([name, value]) => name.text + value.text).join(''),
  }));

const table = (max: number) =>
  fc
    .record({
      head: fc.array(words(3), { minLength: 3, maxLength: 3 }),
      rows: fc.array(fc.array(inline(max), { minLength: 1, maxLength: 3 }), { maxLength: max > 20 ? 2 : 25 }),
      rules: fc.constantFrom('rows', 'none'),
    })
    .map(({ head: heads, rows, rules }) => ({
      markup: `<table widths="3 2 2" rules="${rules}" caption="Some rows"><thead><tr>${heads
        .map((cell) => `<th scope="col">${cell.markup}</th>`)
        .join('')}</tr></thead><tbody>${rows
        .map(
          (row) =>
            `<tr>${row.map((cell, place) => `<td align="${place === 0 ? 'left' : 'right'}">${cell.markup}</td>`).join('')}</tr>`,
        )
        .join('')}</tbody></table>`,
      text: heads.map((cell) => cell.text).join('') + rows.flatMap((row) => row.map((cell) => cell.text)).join(''),
    }));

const still = fc
  .constantFrom('<rule weight="1" colour="accent"/>', '<space lines="2"/>', '<page-break/>')
  .map((markup) => ({ markup, text: '' }));

const signature = (name: number) =>
  words(8).map((some) => ({
    markup: `<signature-field name="f${name}" label="${some.markup}" width="70" height="12"/>`,
    text: some.text,
  }));

const simple = (max: number) => fc.oneof(paragraph(max), list, facts, table(max));
const columns = (max: number) =>
  fc
    .tuple(fc.array(simple(max), { minLength: 1, maxLength: 2 }), fc.array(simple(max), { maxLength: 2 }))
    .map(([left, right]) => ({
      markup: `<columns widths="7 5"><column>${joined(left).markup}</column><column>${joined(right).markup}</column></columns>`,
      text: joined(left).text + joined(right).text,
    }));
const keep = fc.array(fc.oneof(paragraph(30), list), { minLength: 1, maxLength: 4 }).map((some) => ({
  markup: `<keep with-previous="yes">${joined(some).markup}</keep>`,
  text: joined(some).text,
}));

/**
 * Any document of the tag set.
 * @param wordsMax greatest number of words in a stretch of text: with many, rows and columns grow taller than a page
 */
export function anyDocument(wordsMax: number): fc.Arbitrary<Sample> {
  const blocks = fc.array(fc.oneof({ weight: 6, arbitrary: simple(wordsMax) }, head, still, keep, columns(wordsMax)), {
    maxLength: 10,
  });
  return fc
    .tuple(words(6), blocks, signature(1), fc.constantFrom('letter', 'a4'))
    .map(([title, some, last, paper]) => ({
      markup: `<document title="t" lang="en" paper="${paper}" accent="#204060">
<footer><p size="note">a footer of some words</p><p size="note" align="right">page <page-number/> of <page-count/></p></footer>
<h1>${title.markup}</h1>${joined(some, '\n').markup}${last.markup}</document>`,
      text: title.text + joined(some).text + last.text,
    }));
}
