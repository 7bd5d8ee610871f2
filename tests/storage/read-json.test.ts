import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { readJson } from '../../src/storage/read-json.ts';

const folder = mkdtempSync(path.join(tmpdir(), 'keyout-read-json-'));
afterAll(() => rmSync(folder, { recursive: true }));

const broken = [
  ['a comma too many', '{\n  "a": 1,\n}', 'line 3, column 1'],
  ['a bare word', '{\n  "a": word\n}', 'line 2, column 8'],
  ['a missing value', '{\n  "a": ,\n  "b": 2\n}', 'line 2, column 8'],
  ['a file cut short', '{\n  "a": 1', 'line 2, column 9'],
] as const;

describe('a file that is not JSON', () => {
  it.each(broken)('is told with the line and column of %s', (_, text, where) => {
    const file = path.join(folder, 'book.json');
    writeFileSync(file, text);
    expect(() => readJson(file)).toThrow(`${file}, ${where}`);
  });

  it('is told as missing when it does not exist', () => {
    expect(() => readJson(path.join(folder, 'none.json'))).toThrow('The file does not exist.');
  });
});
