import { cpSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { typeInto } from '../prompts/typist.ts';
import { runKeyout } from './run-keyout.ts';

const root = mkdtempSync(path.join(tmpdir(), 'keyout-typed-money-'));
const finished = path.join(root, 'finished');
beforeAll(() => {
  expect(runKeyout(['demo', finished], root).exitCode).toBe(0);
});
afterAll(() => rmSync(root, { recursive: true, force: true }));

function freshBook() {
  const folder = mkdtempSync(path.join(root, 'book-'));
  cpSync(finished, folder, { recursive: true });
  const ledger = () => readFileSync(path.join(folder, 'ledger.jsonl'), 'utf8');
  const type = (words: string[], script: Record<string, string>, ...more: string[]) =>
    typeInto(
      [...words, '--book', folder, '--today', '2026-12-15', ...more],
      Object.entries(script).map(([begins, text]) => ({ begins, text })),
      { folder: root },
    );
  return { ledger, type };
}

describe('on a terminal', () => {
  test('a credit note is shown and issued only when its invoice’s number is typed', async () => {
    const { ledger, type } = freshBook();
    const before = ledger();
    const refused = await type(['credit', 'INV-0001'], {
      'Why is it credited?': 'billed twice',
      'A credit note': 'yes',
    });
    expect(refused.exitCode).toBe(1);
    expect(refused.screen).toMatch(/Credit note to North Lattice[\s\S]*total\s+\$211\.48[\s\S]*Nothing was issued/);
    expect(ledger()).toBe(before);
    const issued = await type(['credit', 'INV-0001'], {
      'Why is it credited?': 'billed twice',
      'A credit note': 'inv-0001',
    });
    expect(issued).toMatchObject({ exitCode: 0, unused: [] });
    expect(ledger()).toContain('"number":"CRN-0001"');
  });

  test('with --yes nothing is asked', async () => {
    const { type } = freshBook();
    const issued = await type(['credit', 'INV-0001', '--because', 'x', '--yes'], {});
    expect(issued).toMatchObject({ exitCode: 0, prompts: [] });
  });

  test('a payment is asked for what is missing, and the same again is recorded only when said so', async () => {
    const { ledger, type } = freshBook();
    const words = ['paid', 'INV-0001', '--day', '2026-12-10'];
    const answers = { 'How much was paid? ($211.48 is open)': '100', 'How was it paid?': '' };
    expect(await type(words, answers)).toMatchObject({ exitCode: 0 });
    expect(ledger()).toMatch(/"method":"bank transfer","amountMinorUnits":10000/);
    const answered = { 'How much was paid? ($111.48 is open)': '100', 'How was it paid?': '' };
    const declined = await type(words, { ...answered, 'If it is another': 'no' });
    expect(declined.exitCode).toBe(1);
    expect(declined.screen).toContain('PAY-0001 looks like the same payment');
    expect(ledger()).not.toContain('PAY-0002');
    expect(await type(words, { ...answered, 'If it is another': 'again' })).toMatchObject({ exitCode: 0 });
    expect(ledger()).toContain('PAY-0002');
  });
});
