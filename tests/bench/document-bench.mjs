// Documents a second against two general PDF libraries on equal content, and memory over 500 documents; ratios of one run.
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';
import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import PdfKit from 'pdfkit';
import pdfmake from 'pdfmake';
import { readFonts } from '../../src/storage/fonts.ts';
import { typeset } from '../../src/typesetting/typeset.ts';

setFlagsFromString('--expose_gc');
const collect = runInNewContext('gc');
const folder = path.join(path.dirname(createRequire(import.meta.url).resolve('dejavu-fonts-ttf/package.json')), 'ttf');
const files = {
  regular: path.join(folder, 'DejaVuSansCondensed.ttf'),
  bold: path.join(folder, 'DejaVuSansCondensed-Bold.ttf'),
};
const bytes = { regular: readFileSync(files.regular), bold: readFileSync(files.bold) };
const median = (numbers) => numbers.toSorted((one, other) => one - other)[Math.floor(numbers.length / 2)];

// one content for all three: a title, two paragraphs, thirty rows of four cells with a note below each
const contentOf = (number) => ({
  title: `Statement ${number}`,
  paragraphs: [0, 1].map((part) =>
    `Paragraph ${part} of statement ${number}: `.concat(
      'words that say what was fitted and where it sits, at 12.58 V. '.repeat(8),
    ),
  ),
  head: ['What', 'Quantity', 'Price', 'Amount'],
  rows: Array.from({ length: 30 }, (_, row) => [
    `Line ${row} of ${number}`,
    `because of a reason with the number ${number * row}`,
    `${row}`,
    `$${row * 3}.50`,
    `$${row * row}.50`,
  ]),
});

const escaped = (text) => text.replace(/[&<>{}]/g, (sign) => `&#${sign.codePointAt(0)};`);
async function withKeyout(content) {
  const rows = content.rows.map(
    ([what, because, ...numbers]) =>
      `<tr><td><p face="condensed">${escaped(what)}</p><p size="note" face="condensed">${escaped(because)}</p></td>${numbers.map((cell) => `<td align="right">${cell}</td>`).join('')}</tr>`,
  );
  const markup = `<document title="t" lang="en"><h1>${content.title}</h1>${content.paragraphs.map((text) => `<p face="condensed">${escaped(text)}</p>`).join('')}<table widths="6 2 2 2" caption="Lines"><thead><tr>${content.head.map((cell, place) => `<th scope="col" align="${place > 0 ? 'right' : 'left'}">${cell}</th>`).join('')}</tr></thead><tbody>${rows.join('')}</tbody></table></document>`;
  const { pdf } = await typeset({
    template: markup,
    templateName: 'bench',
    partials: {},
    view: {},
    fonts: readFonts(),
    title: content.title,
    author: 'bench',
    language: 'en',
    created: '2026-11-25',
    identity: '0'.repeat(32),
  });
  return pdf.length;
}

const finished = (document) =>
  new Promise((resolve) => {
    let size = 0;
    document.on('data', (part) => {
      size += part.length;
    });
    document.on('end', () => resolve(size));
    document.end();
  });

function withPdfKit(content) {
  const document = new PdfKit({ size: 'LETTER', margin: 45 });
  document.registerFont('regular', bytes.regular);
  document.registerFont('bold', bytes.bold);
  document.font('bold').fontSize(17).text(content.title);
  document.font('regular').fontSize(9.5);
  for (const text of content.paragraphs) document.text(text, { width: 520 });
  const edges = [45, 305, 392, 479];
  const row = (cells, note) => {
    if (document.y > 690) document.addPage();
    const { y } = document;
    for (const [place, cell] of cells.entries())
      document
        .fontSize(9.5)
        .text(cell, edges[place], y, { width: place === 0 ? 250 : 80, align: place === 0 ? 'left' : 'right' });
    if (note !== undefined) document.fontSize(8).text(note, 45, y + 13, { width: 250 });
    document
      .moveTo(45, y + 27)
      .lineTo(567, y + 27)
      .lineWidth(0.4)
      .stroke();
    document.y = y + 30;
  };
  document.font('bold');
  row(content.head);
  document.font('regular');
  for (const [what, because, ...numbers] of content.rows) row([what, ...numbers], because);
  return finished(document);
}

pdfmake.setUrlAccessPolicy(() => false);
pdfmake.setLocalAccessPolicy(() => true);
pdfmake.setFonts({ DejaVu: { normal: files.regular, bold: files.bold } });
async function withPdfMake(content) {
  const right = (text) => ({ text, alignment: 'right' });
  const document = pdfmake.createPdf({
    pageSize: 'LETTER',
    pageMargins: 45,
    defaultStyle: { font: 'DejaVu', fontSize: 9.5 },
    content: [
      { text: content.title, fontSize: 17, bold: true },
      ...content.paragraphs,
      {
        layout: 'lightHorizontalLines',
        table: {
          headerRows: 1,
          dontBreakRows: true,
          widths: ['*', 80, 80, 80],
          body: [
            content.head.map((text, place) => ({ text, bold: true, alignment: place > 0 ? 'right' : 'left' })),
            ...content.rows.map(([what, because, ...numbers]) => [
              { stack: [what, { text: because, fontSize: 8 }] },
              ...numbers.map(right),
            ]),
          ],
        },
      },
    ],
  });
  return (await document.getBuffer()).length;
}

const makers = { keyout: withKeyout, pdfkit: withPdfKit, pdfmake: withPdfMake };
const times = { keyout: [], pdfkit: [], pdfmake: [] };
const sizes = {};
const turns = Number(process.env.TURNS ?? 40);
for (let turn = 0; turn < turns + 5; turn += 1)
  for (const [name, make] of Object.entries(makers)) {
    const start = process.hrtime.bigint();
    sizes[name] = await make(contentOf(turn));
    if (turn >= 5) times[name].push(Number(process.hrtime.bigint() - start) / 1e6);
  }
const own = median(times.keyout);
for (const [name, some] of Object.entries(times))
  console.log(
    `documents of two pages: ${name} ${(1000 / median(some)).toFixed(0)} a second, keyout takes ${(own / median(some)).toFixed(2)} of its time, ${(sizes[name] / 1024).toFixed(0)} kB${name === 'keyout' ? ', tagged and archival' : ''}`,
  );

// memory: the least-squares slope of what is left after collection, over documents that all differ
const count = Number(process.env.DOCUMENTS ?? 500);
const points = [];
for (let number = 0; number < count; number += 1) {
  await withKeyout(contentOf(1000 + number));
  if (number % 20 === 19) {
    collect();
    const { heapUsed, rss, arrayBuffers } = process.memoryUsage();
    points.push({ number, heap: heapUsed + arrayBuffers, rss });
  }
}
// the first fifth fills the memory of words and glyphs
const late = points.filter((point) => point.number >= count / 5);
const slope = (key) => {
  const mean = (pick) => late.reduce((sum, point) => sum + pick(point), 0) / late.length;
  const [x, y] = [mean((point) => point.number), mean((point) => point[key])];
  return (
    late.reduce((sum, point) => sum + (point.number - x) * (point[key] - y), 0) /
    late.reduce((sum, point) => sum + (point.number - x) ** 2, 0)
  );
};
console.log(
  `memory over ${count} documents: heap ${(slope('heap') / 1024).toFixed(2)} kB a document, process ${(slope('rss') / 1024).toFixed(2)} kB a document, ${(points.at(-1).rss / 2 ** 20).toFixed(0)} MB at the end`,
);
