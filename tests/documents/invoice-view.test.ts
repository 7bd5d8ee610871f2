import { describe, expect, test } from 'vitest';
import { invoiceView } from '../../src/documents/invoice-view.ts';
import type { IssuedInvoice } from '../../src/records/issued-invoice.ts';
import { exampleBook, exampleCredit, exampleInvoice } from './example-invoice.ts';
import { saidIn } from './view-of.ts';

const viewed = (change: Partial<IssuedInvoice>, bookChange: Partial<typeof exampleBook> = {}) =>
  invoiceView({ invoice: { ...exampleInvoice, ...change }, book: { ...exampleBook, ...bookChange } });
const [flat, cable] = exampleInvoice.lines;
if (flat === undefined || cable === undefined) throw new Error('the example invoice has two lines');
const lineOf = (line: Partial<typeof cable>, change: Partial<IssuedInvoice> = {}) => {
  const found = viewed({ ...change, lines: [{ ...cable, ...line }] }).sections[0]?.lines[0];
  if (found === undefined) throw new Error('no line');
  return found;
};

describe('the lines of an invoice', () => {
  test.each([
    ['72.5', 'USD', '$0.725'],
    ['14500', 'USD', '$145.00'],
    ['0.125', 'USD', '$0.00125'],
    ['72.5', 'JPY', '¥72.5'],
    ['1234', 'KWD', 'KWD\u00a01.234'],
  ])('a price of %s in minor units of %s is written %s', (unitPriceMinorUnits, currency, written) => {
    expect(lineOf({ unitPriceMinorUnits }, { currency }).price).toBe(written);
  });

  test('a quantity and a price are written with the comma of the locale', () => {
    const view = viewed({ language: 'es' }, { locale: 'es-ES' });
    expect(view.sections[0]?.lines[1]).toMatchObject({ quantity: '2,5', unit: 'm' });
  });

  test('minutes charged by the hour are written as hours', () => {
    expect(lineOf({ quantity: '45', unit: 'minute', baseQuantity: '60', unitPriceMinorUnits: '8800' })).toMatchObject({
      quantity: '0.75',
      unit: 'h',
      price: '$88.00',
    });
  });

  test('a price for many says for how many', () => {
    expect(lineOf({ baseQuantity: '100', unitPriceMinorUnits: '950' }).price).toBe('$9.50 for 100');
  });

  test('a line of a job that no vehicle names is printed all the same', () => {
    const view = viewed({ lines: [flat, { ...cable, job: null }, { ...cable, job: '2026-01-01-AAAA', what: 'Loom' }] });
    expect(view.sections.map((section) => section.text)).toEqual([
      exampleInvoice.vehicles[0]?.text,
      'Not tied to one vehicle',
    ]);
    expect(view.sections[1]?.lines.map((line) => line.what)).toEqual(['Cable', 'Loom']);
  });
});

describe('how to pay', () => {
  test('the payment link holds number and amount as a person writes them', () => {
    const link = viewed({}).pay.find((row) => row.name === 'Online')?.text;
    const { dueMinorUnits } = exampleInvoice.totals;
    expect(link).toBe(`https://pay.example/INV-0001/${(dueMinorUnits / 100).toFixed(2)}`);
  });

  test('an account number of the IBAN kind is grouped by four', () => {
    const payment = { ...exampleInvoice.payment, iban: 'DE00123412341234123412' };
    expect(viewed({ payment }).pay).toContainEqual({ name: 'IBAN', text: 'DE00 1234 1234 1234 1234 12' });
  });

  test('is left out when nothing is due', () => {
    expect(viewed({ totals: { ...exampleInvoice.totals, dueMinorUnits: 0 } }).hasPay).toBe(false);
  });
});

describe('a credit note', () => {
  const view = invoiceView({ invoice: exampleCredit, book: exampleBook });

  test('names the invoice it credits, the reason and the amount, and asks for no payment', () => {
    expect(view).toMatchObject({
      heading: 'Credit note',
      isCredit: true,
      corrects: 'INV-0001',
      creditExplained: 'This credits invoice INV-0001 of November 24, 2026. Nothing is to be paid on this document.',
      because: 'agreed',
      closingLine: 'Credited',
      dueAmount: '$145.00',
      hasPay: false,
      hasTerms: false,
      hasLate: false,
      hasEarly: false,
    });
  });

  test('says nothing of a day by which to pay', () => {
    const { words: _labels, due: _unused, ...said } = view;
    expect(saidIn(said)).not.toMatch(/\bDue\b|to pay\b(?! is)/);
  });
});

describe('the parties', () => {
  const address = { lines: ['1 Hafenstraße'], city: 'Kiel', postcode: '24103', country: 'DE' };

  test('the country is named only where the two differ', () => {
    expect(viewed({}).payerLines.map((line) => line.text)).not.toContain('United States');
    expect(viewed({ payer: { ...exampleInvoice.payer, address } }).payerLines.map((line) => line.text)).toEqual([
      '1 Hafenstraße',
      '24103 Kiel',
      'Germany',
    ]);
  });
});
