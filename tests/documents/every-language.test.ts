import { describe, expect, test } from 'vitest';
import { invoiceView } from '../../src/documents/invoice-view.ts';
import type { JobInput } from '../../src/records/job.ts';
import { type Language, languages } from '../../src/records/language.ts';
import { rules } from '../../src/rules/index.ts';
import { soundFacts, soundJob, soundPayer } from '../../src/rules/sound-job.ts';
import { colourWords } from '../../src/words/de/evidence-words-de.ts';
import { wordsIn } from '../../src/words/words-in.ts';
import { makeInvoice } from '../pricing/worded.ts';
import { exampleBook, exampleCredit, exampleInvoice, examplePricedLine } from './example-invoice.ts';
import { saidIn, viewOf } from './view-of.ts';

const facts = soundFacts(soundJob);

/** How each language besides English is tried: as its country writes, with the words that it shares with English. */
const tried = {
  es: { locale: 'es-ES', shared: 'no' },
  de: { locale: 'de-DE', shared: 'bank minus name november online plan so was' },
} as const satisfies Record<Exclude<Language, 'en'>, { locale: string; shared: string }>;
const others = languages.filter((language) => language !== 'en');

const bookIn = (language: keyof typeof tried) =>
  ({ ...facts.book, language, locale: tried[language].locale, units: { distance: 'km', length: 'mm' } }) as const;
const spanishBook = bookIn('es');

/** What every language writes alike: units, and titles of publications. */
const alike = 'total vin imei pin min ma mv cfr ccr usc din iso sae faa ac iec ts gpp unece fmvss abababab'.split(' ');

const wordsOf = (text: string) =>
  new Set(
    text
      .toLowerCase()
      .match(/\p{L}+/gu)
      ?.filter((word) => word.length > 1 && !alike.includes(word)),
  );

/** English words that a text in another language still holds, those of the record itself aside. */
function leftInEnglish(
  english: unknown,
  other: unknown,
  record: unknown,
  language: keyof typeof tried,
): readonly string[] {
  const own = wordsOf(saidIn(record));
  const inEnglish = wordsOf(saidIn(english));
  const shared: readonly string[] = tried[language].shared.split(' ');
  return [...wordsOf(saidIn(other))].filter((word) => inEnglish.has(word) && !own.has(word) && !shared.includes(word));
}

const { identity = {}, vehicle = {}, device = { profile: '' }, connections = [] } = soundJob;
const sheets: readonly (readonly [string, Partial<JobInput>])[] = [
  ['of the sound job', {}],
  [
    'of a swap on a hybrid',
    { identity: { ...identity, visit: 'swap' }, vehicle: { ...vehicle, drive: 'hybrid', start: 'button' } },
  ],
  ['of a removal', { identity: { ...identity, visit: 'removal' } }],
  ['of a service call', { identity: { ...identity, visit: 'service call' }, device: { ...device, active: false } }],
  ['of a wasted visit', { identity: { ...identity, visit: 'wasted visit' }, signature: { answer: 'not available' } }],
  ['of a bare record', { identity: {}, vehicle: {}, device: { profile: 'example-device' } }],
  [
    'of short tape and no fuse',
    { connections: connections.map(({ fuse: _fuse, ...made }) => ({ ...made, tapeMillimetres: 5 })) },
  ],
  ['of wires that were not read', { probePoints: [{ name: 'P1', readings: [], verdict: 'constant' }] }],
  ['of a refusal', { signature: { answer: 'refuses', name: 'Ada Quill', remark: 'lamp' } }],
  ['of lamps that came on', { after: { warningLamps: ['air bag'], functionsNotWorking: ['horn', 'rear dome light'] } }],
];

describe.each(others)('a sheet in %s', (language) => {
  test.each(sheets)('%s holds none of the English words', (_, change) => {
    const { paper: _paper, ...english } = viewOf(change);
    const { paper: _letter, language: _language, ...said } = viewOf(change, { book: bookIn(language) });
    const record = [{ ...soundJob, ...change }, facts.book, facts.profile];
    expect(leftInEnglish(english, said, record, language)).toEqual([]);
  });

  test('is written for a payer of that language, whatever the business speaks', () => {
    const payer = { language } as NonNullable<typeof facts.payer>;
    expect(viewOf({}, { payer }).words.handoverSheet).toBe(wordsIn(language).labels.handoverSheet);
  });

  test('has a wording for every rule', () => {
    expect(Object.keys(wordsIn(language).rules).sort()).toEqual(rules.map((rule) => rule.id).sort());
  });
});

describe('a Spanish sheet', () => {
  test('writes dates, decimals and lengths as Spain does, and names wires in Spanish', () => {
    const said = saidIn(viewOf({}, { book: spanishBook }));
    for (const part of [
      '24 de noviembre de 2026',
      '12,57',
      '90\u00a0mm',
      'rojo con raya blanca',
      'salpicadero, izquierda',
    ])
      expect(said).toContain(part);
    expect(said).not.toContain('12.57');
  });

  test('in the United States keeps the decimal point and inches', () => {
    const said = saidIn(viewOf({}, { book: { ...facts.book, language: 'es' } }));
    for (const part of ['24 de noviembre de 2026', '12.57', '3.5\u00a0pulg.', '48,211 mi'])
      expect(said).toContain(part);
  });
});

describe.each(others)('an invoice in %s', (language) => {
  test.each([
    ['invoice', exampleInvoice],
    ['credit note', exampleCredit],
  ])('%s holds none of the English words', (_, invoice) => {
    const english = invoiceView({ invoice, book: exampleBook });
    const {
      paper: _paper,
      accent: _accent,
      ...said
    } = invoiceView({
      invoice: { ...invoice, language },
      book: exampleBook,
    });
    expect(leftInEnglish(english, said, [invoice, exampleBook], language)).toEqual([]);
  });
});

describe('a vehicle of an invoice', () => {
  test('names its plate and unit in Spanish', () => {
    const invoice = makeInvoice({
      number: 'INV-0001',
      issued: '2026-11-24',
      book: exampleBook,
      payer: { ...soundPayer, language: 'es' },
      jobs: [{ job: facts.job, lines: [{ ...examplePricedLine }] }],
      documentDiscountPercent: '0',
    });
    expect(invoice.vehicles[0]?.text).toBe(
      '2024 Corvane Haul 150, matrícula VLT 4417, unidad B-17, VIN 5ZWTA3CD3R1004417',
    );
  });
});

describe('a German sheet', () => {
  test.each([
    ['White', 'rot mit weißem Streifen'],
    ['pink', 'rot mit Streifen rosa'],
    ['constructor', 'rot mit Streifen constructor'],
  ])('bends the colour of a stripe where German does: %s', (stripe, said) => {
    expect(colourWords({ colour: 'red', stripe })).toBe(said);
  });

  test('writes dates, decimals and lengths as Germany does, and names wires in German', () => {
    const said = saidIn(viewOf({}, { book: bookIn('de') }));
    for (const part of ['24. November 2026', '12,57', '90\u00a0mm', 'rot mit weißem Streifen', 'Armaturenbrett, links'])
      expect(said).toContain(part);
    expect(said).not.toContain('12.57');
  });
});
