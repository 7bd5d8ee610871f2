import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { coveringHandoverView, coveringInvoiceView } from '../../src/documents/covering-view.ts';
import { invoiceView } from '../../src/documents/invoice-view.ts';
import { soundFacts, soundJob } from '../../src/rules/sound-job.ts';
import { tagSet } from '../../src/typesetting/markup/tag-set.ts';
import { labelsEn } from '../../src/words/en/labels-en.ts';
import { exampleBook, exampleCredit, exampleInvoice } from './example-invoice.ts';
import { viewOf } from './view-of.ts';

const folder = path.resolve(import.meta.dirname, '../../templates');
const guide = readFileSync(path.join(folder, 'TEMPLATES.md'), 'utf8');

/** The rows of the first table under a heading. */
function rowsUnder(heading: string): readonly string[] {
  const from = guide.indexOf(`## ${heading}\n`);
  const to = guide.indexOf('\n## ', from + 3);
  return guide
    .slice(from, to < 0 ? undefined : to)
    .split('\n')
    .filter((row) => row.startsWith('| `'));
}

/** Field and kind of each row. */
const documented = (heading: string) =>
  rowsUnder(heading)
    .map((row) => row.split('|').map((cell) => cell.trim()))
    .map((cells) => `${cells[1]?.replaceAll('`', '')}: ${cells[2]}`)
    .sort();

function fieldsOf(view: unknown, field = ''): readonly string[] {
  if (typeof view === 'string') return [`${field}: text`];
  if (typeof view === 'boolean') return [`${field}: yes or no`];
  if (Array.isArray(view)) return [`${field}: list`, ...view.flatMap((each) => fieldsOf(each, `${field}[]`))];
  return Object.entries(view as object).flatMap(([name, each]) =>
    fieldsOf(each, field === '' ? name : `${field}.${name}`),
  );
}

/** The fields of several views of one template together, the labels aside. */
const fieldsOfAll = (views: readonly object[]) =>
  [...new Set(views.flatMap((view) => fieldsOf({ ...view, words: {} })))].sort();

describe('the guide to templates', () => {
  test('names every field of the handover sheet and its kind, and no other', () => {
    const full = viewOf(
      {
        photographs: [{ file: 'a.jpg', shows: 'device' }],
        connections: soundJob.connections?.map((made) => ({ ...made, tapeMillimetres: 4 })),
        placement: { zone: 'dash left', surface: 'duct', fixing: 'loose', above: 'metal' },
        signature: { answer: 'accepts', strokes: [[1, 2, 3, 4]] },
        after: { warningLamps: ['air bag'], functionsNotWorking: [] },
        parts: [],
        labour: { start: '2026-11-24T09:00', end: '2026-11-24T08:00' },
      },
      {},
      {
        imageNames: ['a.jpg'],
        findings: ['block', 'reason', 'advise'].map((severity) => ({
          rule: 'splice-is-tied',
          severity: severity as 'block',
          at: '',
          says: 'not tied',
          figures: { lead: 'supply' },
          source: 's',
        })),
      },
    );
    expect(documented('Fields of `handover.hbs`')).toEqual(fieldsOfAll([full, viewOf()]));
  });

  test('names every field of the invoice and its kind, and no other', () => {
    const taxed = {
      ...exampleInvoice,
      allowances: [{ charge: false, because: 'agreed', amountMinorUnits: 1, taxCode: 'x' }],
      taxes: [
        {
          taxCode: 'x',
          name: 'Tax',
          category: 'S' as const,
          ratePercent: '5',
          jurisdictions: [],
          reason: 'r',
          baseMinorUnits: 1,
          taxMinorUnits: 1,
        },
      ],
    };
    const views = [taxed, exampleInvoice, exampleCredit].map((invoice) => invoiceView({ invoice, book: exampleBook }));
    expect(documented('Fields of `invoice.hbs`')).toEqual(fieldsOfAll(views));
  });

  test('names every field of the covering texts', () => {
    const views = [coveringHandoverView(soundFacts(soundJob)), coveringInvoiceView(exampleInvoice, exampleBook)];
    expect(documented('Fields of the covering texts')).toEqual(fieldsOfAll(views));
  });

  test('names every tag with its attributes and what may stand inside it', () => {
    expect(rowsUnder('Markup')).toEqual(Object.entries(tagSet).map(([tag, rule]) => tagRow(tag, rule)));
  });

  test('names every template of the folder', () => {
    const names = readdirSync(folder).filter((name) => name.endsWith('.hbs'));
    expect(names.filter((name) => !guide.includes(`\`${name}\``))).toEqual([]);
  });

  test('every label that a template asks for is there', () => {
    const asked = readdirSync(folder)
      .filter((name) => name.endsWith('.hbs'))
      .flatMap((name) => [...readFileSync(path.join(folder, name), 'utf8').matchAll(/words\.([a-zA-Z]+)/g)])
      .map((match) => match[1] ?? '');
    expect(asked.filter((name) => !(name in labelsEn))).toEqual([]);
  });
});

/** A row of the guide's table of tags. */
function tagRow(tag: string, { attributes, required = [], content }: (typeof tagSet)[string]): string {
  const kinds = Object.entries(attributes).map(([name, kind]) => {
    const values = typeof kind === 'string' ? kind : kind.join(', ');
    return `${required.includes(name) ? `**${name}**` : name} (${values})`;
  });
  const inside = typeof content === 'string' ? content : content.map((each) => `\`${each}\``).join(' ');
  return `| \`${tag}\` | ${kinds.join('; ') || '–'} | ${inside} |`;
}
