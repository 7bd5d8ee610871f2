import { describe, expect, test } from 'vitest';
import { invoiceView } from '../../src/documents/invoice-view.ts';
import type { JobInput } from '../../src/records/job.ts';
import { soundFacts, soundJob } from '../../src/rules/sound-job.ts';
import { exampleBook, exampleInvoice } from './example-invoice.ts';
import { printed, type Word, wordsOf } from './printed-pages.ts';
import { viewOf, without } from './view-of.ts';

const millimetre = 72 / 25.4;
const { book } = soundFacts(soundJob);
const long =
  'Nguyễn Thị Ánh, Κωνσταντίνος Παπαδόπουλος, Łukasz Логистика, Straßenbau-und-Fernmeldegesellschaft & <Sons>';
const manyPoints: JobInput['probePoints'] = Array.from({ length: 40 }, (_, place) => ({
  name: `P${place + 1}`,
  connector: 'fuse box in the load area, 40-way, behind the second cover',
  pin: String(place + 1),
  colour: 'dark green metallic',
  stripe: 'light blue',
  readings: [{ key: 'on', volts: 12.3 }],
}));

const sheets: readonly (readonly [string, Partial<JobInput>])[] = [
  ['long names in four scripts', { identity: { ...soundJob.identity, customer: { name: long }, place: long } }],
  ['forty wires', { probePoints: manyPoints }],
  ['sixty panels', { panels: Array.from({ length: 60 }, () => ({ name: long, fastener: 'clip', out: 4, in: 4 })) }],
  ['three pages of notes', { notes: `${long}. `.repeat(80) }],
  [
    'lamps and faults by the dozen',
    { after: { warningLamps: Array(12).fill('tyre pressure, rear left'), functionsNotWorking: Array(12).fill(long) } },
  ],
  [
    'the longest words of every splice',
    { connections: soundJob.connections?.map((made) => ({ ...made, method: 'insulation-displacing tap' as const })) },
  ],
];

/** Words that reach over the margin, and pairs of words that lie on each other. */
function faults({ words, width, height }: ReturnType<typeof wordsOf>): readonly string[] {
  expect(words.length).toBeGreaterThan(100);
  const margin = 16 * millimetre - 1;
  const outside = words.filter(
    (word) => word.left < margin || word.right > width - margin || word.top < 0 || word.bottom > height,
  );
  const area = (word: Word) => (word.right - word.left) * (word.bottom - word.top);
  const shared = (one: Word, other: Word) =>
    Math.max(0, Math.min(one.right, other.right) - Math.max(one.left, other.left)) *
    Math.max(0, Math.min(one.bottom, other.bottom) - Math.max(one.top, other.top));
  const onEachOther = words.flatMap((one, place) =>
    words
      .slice(place + 1)
      .filter((other) => other.page === one.page && shared(one, other) > 0.25 * Math.min(area(one), area(other)))
      .map((other) => `"${one.text}" lies on "${other.text}", page ${one.page}`),
  );
  return [...outside.map((word) => `"${word.text}" is outside, page ${word.page}`), ...onEachOther];
}

describe.each([
  ['letter', 'en'],
  ['a4', 'es'],
  ['a4', 'de'],
] as const)('a sheet on %s in %s', (paper, language) => {
  test.each(sheets)('with %s has no word over the margin or on another one', async (_, change) => {
    const view = viewOf(change, { book: { ...book, paper, language } });
    expect(faults(wordsOf((await printed('handover', view)).pdf))).toEqual([]);
  });
});

describe('an invoice', () => {
  test('of eighty lines has no word over the margin or on another one, and repeats the heads of its table', async () => {
    const line = exampleInvoice.lines[0];
    if (line === undefined) throw new Error('no line');
    const lines = Array.from({ length: 80 }, (_, place) => ({ ...line, number: place + 1, what: long, because: long }));
    const { pdf, pages, text } = await printed(
      'invoice',
      invoiceView({ invoice: { ...exampleInvoice, lines }, book: exampleBook }),
    );
    expect(faults(wordsOf(pdf))).toEqual([]);
    expect(pages.length).toBeGreaterThan(3);
    expect(text.match(/What {2}Quantity/g)?.length).toBeGreaterThanOrEqual(pages.length - 1);
  });

  test('without a line is printed all the same', async () => {
    const view = invoiceView({ invoice: { ...exampleInvoice, lines: [] }, book: exampleBook });
    expect((await printed('invoice', view)).pages).toHaveLength(1);
  });
});

describe('the signatures', () => {
  const nothingAfter = {
    ...without('connections', 'probePoints', 'supply', 'ground', 'device'),
    identity: { visit: 'wasted visit' as const },
  };

  test('never stand alone on a page, however long the note before them', async () => {
    const line = 'The machine had been moved and nobody on the site could say where it was by then.';
    const onPage = new Set<number>();
    for (let count = 26; count < 44; count += 1) {
      const notes = Array.from({ length: count }, () => line).join(' ');
      const { text } = await printed('handover', viewOf({ ...nothingAfter, notes }));
      const pages = text.split(/^--- page \d+$/m).slice(1);
      const found = pages.findIndex((page) => page.includes('Signatures'));
      onPage.add(found);
      const before = pages[found]?.slice(0, pages[found]?.indexOf('Signatures')).trim() ?? '';
      expect(before.length, `after ${count} sentences`).toBeGreaterThan(20);
    }
    // the note grew over the foot of the first page while it was tried
    expect([...onPage].sort()).toEqual([0, 1]);
  });
});
