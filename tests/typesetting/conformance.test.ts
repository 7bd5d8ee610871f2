import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { PDFDict, PDFDocument, PDFName, PDFStream } from 'pdf-lib';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { conformanceFlaws } from './conformance-flaws.ts';
import { print } from './print.ts';
import { type Torture, tortureSet } from './torture-set.ts';

const folder = process.env.KEYOUT_TORTURE_FOLDER ?? mkdtempSync(path.join(tmpdir(), 'keyout-torture-'));
const printed = new Map<string, Uint8Array>();
let documents: readonly Torture[] = [];
const fileOf = (name: string) => path.join(folder, `${name.replaceAll(' ', '-')}.pdf`);

beforeAll(async () => {
  documents = await tortureSet();
  for (const { name, markup, more } of documents) {
    const { pdf } = await print(markup, more);
    printed.set(name, pdf);
    writeFileSync(fileOf(name), pdf);
  }
});
afterAll(() => {
  if (process.env.KEYOUT_TORTURE_FOLDER === undefined) rmSync(folder, { recursive: true, force: true });
});

const names = [
  'names in four alphabets',
  'notes of three pages',
  'no lines',
  '80 lines',
  'a row and columns taller than a page',
  'figures',
  'long words',
  '24 photographs',
];

describe('the torture set', () => {
  test('is complete', () => expect(documents.map((each) => each.name)).toEqual(names));

  test.each(names)('%s: has no flaw of PDF/UA-1 and PDF/A-3', async (name) => {
    expect(await conformanceFlaws(printed.get(name) as Uint8Array)).toEqual([]);
  });

  test.each(names)('%s: reads without a fault and draws every glyph', (name) => {
    const checked = spawnSync('qpdf', ['--check', fileOf(name)], { encoding: 'utf8' });
    expect(checked.stdout).toContain('No syntax or stream encoding errors found');
    const drawn = spawnSync('mutool', ['draw', '-o', path.join(folder, 'page-%d.pgm'), '-r', '20', fileOf(name)], {
      encoding: 'utf8',
    });
    expect(drawn.status).toBe(0);
    expect(drawn.stderr.split('\n').filter((line) => /^(warning|error)/.test(line) && !line.includes('ICC'))).toEqual(
      [],
    );
  });

  test.each(names)('%s: gives the same bytes again', async (name) => {
    const again = documents.find((each) => each.name === name) as Torture;
    const { pdf } = await print(again.markup, again.more);
    expect(Buffer.from(pdf).equals(Buffer.from(printed.get(name) as Uint8Array))).toBe(true);
  });

  test('another reader finds every word as wide as it was measured', async () => {
    const { pdf, pages } = await print(
      '<document title="t"><h1>T</h1><p>AVATAR</p><p face="condensed">ToVaLYe</p><p weight="bold">WAVE</p><p face="mono">OV3-004417</p></document>',
    );
    const file = path.join(folder, 'words.pdf');
    writeFileSync(file, pdf);
    const words = spawnSync('pdftotext', ['-bbox', file, '-'], { encoding: 'utf8' }).stdout;
    for (const mark of pages.flatMap((page) => page.marks)) {
      if (mark.kind !== 'text') continue;
      const [, left, right] =
        new RegExp(`xMin="([\\d.]+)" yMin="[\\d.]+" xMax="([\\d.]+)" yMax="[\\d.]+">${mark.text}<`).exec(words) ?? [];
      expect([mark.text, Number(left)]).toEqual([mark.text, expect.closeTo(mark.x, 2)]);
      expect([mark.text, Number(right) - Number(left)]).toEqual([mark.text, expect.closeTo(mark.width, 2)]);
    }
  });

  test('names of every alphabet are copied as they were written', () => {
    const text = spawnSync('pdftotext', [fileOf('names in four alphabets'), '-'], {
      encoding: 'utf8',
    }).stdout.normalize('NFC');
    for (const name of [
      'Παπαδημητρακόπουλος',
      'Ἀθηνῶν',
      'Щербатов',
      'Їжакович',
      'Nguyễn Thị Ngọc Ánh',
      'Źdźbłowski-Żółć',
      'Zoë Nguyễn',
    ])
      expect(text).toContain(name);
  });

  test('notes run over three pages or more and the signatures are not alone', () => {
    const last = spawnSync('pdftotext', ['-f', '3', fileOf('notes of three pages'), '-'], { encoding: 'utf8' }).stdout;
    expect(last).toContain('Signatures');
    expect(last.indexOf('A note')).toBeGreaterThanOrEqual(0);
  });

  test('the structured file inside comes out as it went in', () => {
    const out = path.join(folder, 'factur-x.xml');
    spawnSync('pdfdetach', ['-save', '1', '-o', out, fileOf('80 lines')]);
    expect(spawnSync('cat', [out], { encoding: 'utf8' }).stdout).toContain('<invoice/>');
  });

  test('the fields are signature fields to another reader', () => {
    const text = spawnSync('pdfsig', [fileOf('figures')], { encoding: 'utf8' });
    expect(text.stdout + text.stderr).toMatch(/signature/i);
  });
});

describe('the check itself finds', () => {
  const broken: readonly (readonly [string, RegExp, (pdf: PDFDocument) => void])[] = [
    ['a document that is not marked', /MarkInfo/, (pdf) => pdf.catalog.delete(PDFName.of('MarkInfo'))],
    ['a missing language', /no language/, (pdf) => pdf.catalog.delete(PDFName.of('Lang'))],
    ['missing metadata', /metadata lack/, (pdf) => pdf.catalog.delete(PDFName.of('Metadata'))],
    ['a missing output intent', /output intent/, (pdf) => pdf.catalog.delete(PDFName.of('OutputIntents'))],
    ['a missing tree', /no structure tree/, (pdf) => pdf.catalog.delete(PDFName.of('StructTreeRoot'))],
    ['a page that leads nowhere', /no StructParents/, (pdf) => pdf.getPage(0).node.delete(PDFName.of('StructParents'))],
    ['a page without tab order', /Tabs/, (pdf) => pdf.getPage(0).node.delete(PDFName.of('Tabs'))],
    [
      'content outside of the tree',
      /untagged content/,
      (pdf) => pdf.getPage(0).drawLine({ start: { x: 1, y: 1 }, end: { x: 9, y: 9 } }),
    ],
    [
      'a figure without words',
      /without alternative/,
      (pdf) => eachDict(pdf, 'S', 'Figure', (dict) => dict.delete(PDFName.of('Alt'))),
    ],
    [
      'a head without scope',
      /without scope/,
      (pdf) => eachDict(pdf, 'S', 'TH', (dict) => dict.delete(PDFName.of('A'))),
    ],
    [
      'a font that is not embedded',
      /not embedded/,
      (pdf) => eachDict(pdf, 'Type', 'FontDescriptor', (dict) => dict.delete(PDFName.of('FontFile2'))),
    ],
    [
      'a glyph without its letter',
      /without its letter/,
      (pdf) => eachDict(pdf, 'Subtype', 'Type0', (dict) => dict.delete(PDFName.of('ToUnicode'))),
    ],
    [
      'a field without a name',
      /no name for listeners/,
      (pdf) => eachDict(pdf, 'Subtype', 'Widget', (dict) => dict.delete(PDFName.of('TU'))),
    ],
    [
      'a field that is not printed',
      /not printed/,
      (pdf) => eachDict(pdf, 'Subtype', 'Widget', (dict) => dict.delete(PDFName.of('F'))),
    ],
    [
      'a field without appearance',
      /no appearance/,
      (pdf) => eachDict(pdf, 'Subtype', 'Widget', (dict) => dict.delete(PDFName.of('AP'))),
    ],
    [
      'a piece that the tree lost',
      /not in the tree/,
      (pdf) => eachDict(pdf, 'S', 'TH', (dict) => dict.delete(PDFName.of('K'))),
    ],
    [
      'a file without relationship',
      /without its relationship/,
      (pdf) => eachDict(pdf, 'Type', 'Filespec', (dict) => dict.delete(PDFName.of('AFRelationship'))),
    ],
  ];
  test.each(broken)('%s', async (_, flaw, spoil) => {
    const pdf = await PDFDocument.load(
      printed.get(flaw.source.includes('alternative') ? 'figures' : '80 lines') as Uint8Array,
      { updateMetadata: false },
    );
    spoil(pdf);
    const flaws = await conformanceFlaws(await pdf.save({ updateFieldAppearances: false }));
    expect(flaws.some((each) => flaw.test(each))).toBe(true);
  });
});

function eachDict(pdf: PDFDocument, key: string, value: string, change: (dict: PDFDict) => void): void {
  for (const [, object] of pdf.context.enumerateIndirectObjects()) {
    const dict = object instanceof PDFStream ? object.dict : object;
    if (dict instanceof PDFDict && String(dict.get(PDFName.of(key))) === `/${value}`) change(dict);
  }
}
