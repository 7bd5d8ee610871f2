import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { coveringHandoverView, coveringInvoiceView } from '../../src/documents/covering-view.ts';
import { soundFacts, soundJob } from '../../src/rules/sound-job.ts';
import { fillText } from '../../src/typesetting/markup/fill-text.ts';
import { exampleBook, exampleCredit, exampleInvoice } from './example-invoice.ts';

const filled = (name: string, view: object) => {
  const file = path.resolve(import.meta.dirname, `../../templates/${name}.hbs`);
  return fillText(readFileSync(file, 'utf8'), file, view);
};

describe('the text that goes with a document', () => {
  test('of a handover greets the person, names the vehicle and says what was done', () => {
    const text = filled('covering-handover.txt', coveringHandoverView(soundFacts(soundJob)));
    expect(text.split('\n').slice(0, 5)).toEqual([
      'Handover sheet 2026-11-24-KX4D: 2024 Corvane Haul 150',
      '',
      'Good day Ada Quill,',
      '',
      'The handover sheet of November 24, 2026 is attached. Please keep it with the vehicle’s papers.',
    ]);
    expect(text).toContain('was fitted to the 2024 Corvane Haul 150');
  });

  test('of an invoice names amount, day and reference', () => {
    const text = filled('covering-invoice.txt', coveringInvoiceView(exampleInvoice, exampleBook));
    expect(text).toMatch(/Invoice INV-0001 is attached: \$\d+\.\d\d, due December 24, 2026\./);
    expect(text).toContain('Please give this reference with the payment: INV-0001');
  });

  test('of a credit note asks for nothing', () => {
    const text = filled('covering-invoice.txt', coveringInvoiceView(exampleCredit, exampleBook));
    expect(text).toContain('Credit note CRN-0001 is attached: $145.00 credited to invoice INV-0001.');
    expect(text).not.toMatch(/due|payment/i);
  });

  test('is in the language of the document', () => {
    const { book } = soundFacts(soundJob);
    const facts = soundFacts(soundJob, { book: { ...book, language: 'es' } });
    expect(filled('covering-handover.txt', coveringHandoverView(facts))).toContain('Buenos días, Ada Quill:');
  });

  test('keeps signs that markup would have to escape', () => {
    const text = filled(
      'covering-handover.txt',
      coveringHandoverView(
        soundFacts({
          ...soundJob,
          identity: { ...soundJob.identity, customer: { name: 'A', contact: 'Möller & "Söhne" <x>' } },
        }),
      ),
    );
    expect(text).toContain('Good day Möller & "Söhne" <x>,');
  });
});
