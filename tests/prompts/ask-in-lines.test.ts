import { PassThrough } from 'node:stream';
import { describe, expect, test } from 'vitest';
import { askInLines } from '../../src/prompts/ask-in-lines.ts';
import { type Ask, GoBack } from '../../src/prompts/question.ts';

/** Asks while the lines are typed one by one, each after something was written. */
async function typed<T>(lines: readonly string[], question: (ask: Ask) => Promise<T>) {
  const input = new PassThrough();
  const output = new PassThrough();
  const left = [...lines];
  let shown = '';
  output.on('data', (data: Buffer) => {
    shown += data.toString();
    if (/[:?] $/.test(shown)) {
      const line = left.shift();
      shown += `${line}\n`;
      setImmediate(() => (line === undefined ? input.end() : input.write(`${line}\n`)));
    }
  });
  const answer = await question(askInLines({ input, output }));
  return { answer, shown };
}

describe('questions in plain lines', () => {
  test.each<[string, string[], (ask: Ask) => Promise<unknown>, unknown]>([
    ['text', ['Haul'], (ask) => ask.text('Model', ''), 'Haul'],
    ['the usual text with an empty line', [''], (ask) => ask.text('Model', 'Haul'), 'Haul'],
    ['a usual text taken away', ['-'], (ask) => ask.text('Model', 'Haul'), ''],
    ['a choice by number', ['2'], (ask) => ask.choose('Drive', ['combustion', 'hybrid'], 'combustion'), 'hybrid'],
    [
      'a choice by its beginning',
      ['hy'],
      (ask) => ask.choose('Drive', ['combustion', 'hybrid'], 'combustion'),
      'hybrid',
    ],
    ['a choice that is itself a number', ['24'], (ask) => ask.choose('Volts', ['12', '24'], '12'), '24'],
    [
      'a shown name gives its value',
      ['north'],
      (ask) => ask.choose('Payer', [{ value: 'n', name: 'North' }], 'n'),
      'n',
    ],
    ['yes by default', [''], (ask) => ask.confirm('Print?', true), true],
    ['a decision only by y or n', ['', 'n'], (ask) => ask.decide('In the way?'), false],
    ['several marked', ['1, 3'], (ask) => ask.tick('Mark', ['a', 'b', 'c'], []), ['a', 'c']],
    ['all marked', ['all'], (ask) => ask.tick('Mark', ['a', 'b'], []), ['a', 'b']],
  ])('%s', async (_, lines, question, expected) => {
    expect((await typed(lines, question)).answer).toEqual(expected);
  });

  test('a wrong answer is told and asked again', async () => {
    const { answer, shown } = await typed(['x', '2024'], (ask) =>
      ask.text('Year', '', (text) => (/^\d{4}$/.test(text) ? null : 'Type a year.')),
    );
    expect(answer).toBe('2024');
    expect(shown).toContain('  Type a year.\n');
  });

  test('"<" goes back, the end of the input stops', async () => {
    await expect(typed(['<'], (ask) => ask.text('Model', ''))).rejects.toThrow(GoBack);
    await expect(typed([], (ask) => ask.text('Model', ''))).rejects.toMatchObject({ name: 'ExitPromptError' });
  });
});
