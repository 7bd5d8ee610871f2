import { expect, test } from 'vitest';
import { writeFinding } from '../../src/commands/write-finding.ts';

const finding = {
  rule: 'ground-is-proven',
  at: 'ground',
  what: 'What is wrong.',
  why: 'What follows.',
  whatToDo: 'What puts it right.',
  source: 'common practice, no source',
};

test('a reason takes the place of what to do, but never on a block, which no reason excuses', () => {
  const lines = (severity: 'block' | 'reason', answer: string | null) =>
    writeFinding({ ...finding, severity }, answer)
      .split('\n')
      .map((line) => line.trim());
  const head = (severity: string) => [`${severity} (ground): What is wrong.`, 'why:   What follows.'];
  const rule = 'rule:  ground-is-proven [common practice, no source]';
  expect(lines('reason', null)).toEqual([...head('REASON'), 'to do: What puts it right.', rule]);
  expect(lines('reason', 'agreed')).toEqual([...head('REASON'), 'reason given: agreed', rule]);
  expect(lines('block', null)).toEqual([...head('BLOCK'), 'to do: What puts it right.', rule]);
  expect(lines('block', 'agreed')).toEqual([
    ...head('BLOCK'),
    'to do: What puts it right.',
    'reason given: agreed',
    rule,
  ]);
});
