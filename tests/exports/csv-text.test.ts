import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type CsvProfile, csvText, neutralText } from '../../src/exports/tables/csv-text.ts';
import { makeTable } from '../../src/exports/tables/table.ts';

type Row = { readonly text: string; readonly money: string; readonly many: number | null };
const table = (rows: readonly Row[]) =>
  makeTable<Row>(
    'sample',
    'A row.',
    [
      { name: 'text', kind: 'text', about: 'Text.', of: ({ text }) => text },
      { name: 'day', kind: 'date', about: 'A day.', of: () => '2026-11-24' },
      { name: 'money', kind: 'money', about: 'Money.', of: ({ money }) => money },
      { name: 'many', kind: 'integer', about: 'How many.', of: ({ many }) => many },
    ],
    rows,
  );
const plain: CsvProfile = { decimalComma: false, byteOrderMark: false };

test('the plain profile is RFC 4180: commas, dots, CR LF at the end of every line', () => {
  expect(csvText(table([{ text: 'a, "b"', money: '-12.50', many: 3 }]), plain)).toBe(
    'text,day,money,many\r\n"a, ""b""",2026-11-24,-12.50,3\r\n',
  );
});

test('the decimal-comma profile parts fields by semicolons, and nothing is there for nothing', () => {
  const text = csvText(table([{ text: 'a; b', money: '1234.50', many: null }]), {
    decimalComma: true,
    byteOrderMark: true,
  });
  expect(text).toBe('\uFEFFtext;day;money;many\r\n"a; b";2026-11-24;1234,50;\r\n');
});

// RFC 4180, 2.6: a field with a line break stands in quotes, whichever character breaks the line
test.each(['a\nb', 'a\rb', 'a\r\nb'])('a line break in a cell is quoted: %j', (text) => {
  const file = csvText(table([{ text, money: '1.00', many: 1 }]), plain);
  expect(file.split('\r\n').slice(1).join('\r\n')).toBe(`"${text}",2026-11-24,1.00,1\r\n`);
});

test.each([
  ['=1+1', "'=1+1"],
  ['+1 555 0142', "'+1 555 0142"],
  ['-2', "'-2"],
  ['@sum', "'@sum"],
  ['\tx', "'\tx"],
  ['\rx', "'\rx"],
  ['  =x', "'  =x"],
  ['\u200B=x', "'\u200B=x"],
  ['＝x', "'＝x"],
  ['＋x', "'＋x"],
  ['－x', "'－x"],
  ['＠x', "'＠x"],
  ["'=x", "''=x"],
  ['INV-0001', 'INV-0001'],
  ["'tis", "'tis"],
  ['', ''],
])('text %j is written %j', (text, written) => {
  expect(neutralText(text)).toBe(written);
});

test('a cell of the wrong kind is a fault of the program', () => {
  expect(() => csvText(table([{ text: '', money: '1,5', many: 0 }]), plain)).toThrow('not of the kind money');
});

describe('what is written is read back by another reader', () => {
  test.each([plain, { decimalComma: true, byteOrderMark: true }])('%j', (profile) => {
    fc.assert(
      fc.property(
        fc.array(
          fc.record({
            text: fc.oneof(fc.string({ unit: 'grapheme' }), fc.constantFrom('a\nb', 'a\rb', '"', ';', ',', "''=")),
            money: fc.integer({ min: -99_999, max: 99_999 }).map((cents) => `${Math.trunc(cents / 100)}.07`),
            many: fc.integer(),
          }),
        ),
        (rows) => {
          const back = parse(csvText(table(rows), profile), {
            delimiter: profile.decimalComma ? ';' : ',',
            bom: profile.byteOrderMark,
            record_delimiter: '\r\n',
          }) as string[][];
          expect(back.slice(1)).toEqual(
            rows.map(({ text, money, many }) => [
              neutralText(text),
              '2026-11-24',
              profile.decimalComma ? money.replace('.', ',') : money,
              String(many),
            ]),
          );
        },
      ),
    );
  });
});
