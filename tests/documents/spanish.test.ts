import { describe, expect, test } from 'vitest';
import { invoiceView } from '../../src/documents/invoice-view.ts';
import type { JobInput } from '../../src/records/job.ts';
import { rules } from '../../src/rules/index.ts';
import { soundFacts, soundJob, soundPayer } from '../../src/rules/sound-job.ts';
import { rulesEs } from '../../src/words/es/rules/rules-es.ts';
import { makeInvoice } from '../pricing/worded.ts';
import { exampleBook, exampleCredit, exampleInvoice, examplePricedLine } from './example-invoice.ts';
import { saidIn, viewOf } from './view-of.ts';

const facts = soundFacts(soundJob);
const spanishBook = {
  ...facts.book,
  language: 'es',
  locale: 'es-ES',
  units: { distance: 'km', length: 'mm' },
} as const;

/** Words that both languages write alike: units, and titles of publications. */
const shared = 'total vin imei pin min no ma mv cfr ccr usc din iso sae faa ac iec ts gpp unece fmvss abababab'.split(
  ' ',
);

const wordsOf = (text: string) =>
  new Set(
    text
      .toLowerCase()
      .match(/\p{L}+/gu)
      ?.filter((word) => word.length > 1 && !shared.includes(word)),
  );

/** English words that a Spanish text still holds, those of the record itself aside. */
function leftInEnglish(english: unknown, spanish: unknown, record: unknown): readonly string[] {
  const own = wordsOf(saidIn(record));
  const inEnglish = wordsOf(saidIn(english));
  return [...wordsOf(saidIn(spanish))].filter((word) => inEnglish.has(word) && !own.has(word));
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

describe('a Spanish sheet', () => {
  test.each(sheets)('%s holds none of the English words', (_, change) => {
    const { paper: _paper, ...english } = viewOf(change);
    const { paper: _letter, language: _es, ...spanish } = viewOf(change, { book: spanishBook });
    const record = [{ ...soundJob, ...change }, facts.book, facts.profile];
    expect(leftInEnglish(english, spanish, record)).toEqual([]);
  });

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

  test('is written for a payer of that language, whatever the business speaks', () => {
    const payer = { language: 'es' } as NonNullable<typeof facts.payer>;
    expect(viewOf({}, { payer }).words.handoverSheet).toBe('Hoja de entrega');
  });

  test('has a Spanish wording for every rule', () => {
    expect(rules.map((rule) => rule.id).sort()).toEqual(Object.keys(rulesEs).sort());
  });
});

describe('a Spanish invoice', () => {
  test.each([
    ['invoice', exampleInvoice],
    ['credit note', exampleCredit],
  ])('%s holds none of the English words', (_, invoice) => {
    const english = invoiceView({ invoice, book: exampleBook });
    const spanish = invoiceView({ invoice: { ...invoice, language: 'es' }, book: exampleBook });
    const { paper: _paper, accent: _accent, ...said } = spanish;
    expect(leftInEnglish(english, said, [invoice, exampleBook])).toEqual([]);
  });

  test('names plate and unit of the vehicle in Spanish', () => {
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
