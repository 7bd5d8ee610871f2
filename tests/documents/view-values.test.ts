import { describe, expect, test } from 'vitest';
import { invoiceView } from '../../src/documents/invoice-view.ts';
import { exampleBook, exampleCredit, exampleInvoice } from './example-invoice.ts';
import { saidIn, viewOf, without } from './view-of.ts';

const variants: readonly (readonly [string, object])[] = [
  ['of the sound job', viewOf()],
  [
    'of a job that has only a day and a name',
    viewOf({
      ...without(
        'before',
        'panels',
        'supply',
        'probePoints',
        'connections',
        'ground',
        'device',
        'placement',
        'harness',
        'after',
        'photographs',
        'labour',
        'parts',
        'notes',
        'signature',
      ),
      identity: {},
      vehicle: {},
    }),
  ],
  ['of a wasted visit', viewOf({ identity: { visit: 'wasted visit' } })],
  ['of a job without readings', viewOf({ ...without('supply'), probePoints: [] })],
  ['without a device profile', viewOf({}, { profile: null })],
  ['of an invoice', invoiceView({ invoice: exampleInvoice, book: exampleBook })],
  ['of a credit note', invoiceView({ invoice: exampleCredit, book: exampleBook })],
];

/** Paths of values that are neither a string, a boolean nor a list or group of such. */
function strangers(view: unknown, path = 'view'): readonly string[] {
  if (typeof view === 'string' || typeof view === 'boolean') return [];
  if (typeof view === 'object' && view !== null)
    return Object.entries(view).flatMap(([name, each]) => strangers(each, `${path}.${name}`));
  return [`${path} is ${String(view)}`];
}

describe('a view', () => {
  test.each(variants)('%s holds only strings, booleans and lists', (_, view) => {
    expect(strangers(view)).toEqual([]);
  });

  test.each(variants)('%s says nothing that a program says when it has nothing to say', (_, view) => {
    expect(saidIn(view)).not.toMatch(/undefined|\bnull\b|NaN|\[object|Infinity|\{[a-z]+\}/);
  });
});
