import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { soundFacts, soundJob } from '../../src/rules/sound-job.ts';
import { spokenRules as rules } from './spoken-rules.ts';

describe.each(rules.map((rule) => [rule.id, rule] as const))('%s', (_, rule) => {
  test.each(rule.examples.map((example) => [example.name, example] as const))('%s', (_name, example) => {
    const hits = rule.check(soundFacts(example.change(soundJob), example.facts));
    expect(hits.map(({ at, severity, what, whatToDo }) => ({ at, severity, what, whatToDo }))).toEqual(example.finds);
  });

  test('has an example that holds and one that fails, a source and a reason', () => {
    expect(rule.examples.some((example) => example.finds.length === 0)).toBe(true);
    expect(rule.examples.some((example) => example.finds.length > 0)).toBe(true);
    expect(rule.source.length).toBeGreaterThan(5);
    expect(rule.why).toMatch(/\.$/);
  });
});

test('every rule file stands in the list, under its own name', () => {
  const folder = new URL('../../src/rules/', import.meta.url);
  const files = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter(
    (file) => file.endsWith('.ts') && /: Rule = \{|= defineRule\(\{/.test(readFileSync(new URL(file, folder), 'utf8')),
  );
  expect(rules.map((rule) => `${rule.group}/${rule.id}.ts`).sort()).toEqual(files.sort());
  expect(rules.length).toBeGreaterThanOrEqual(55);
});

test('no rule finds anything in the sound job', () => {
  const facts = soundFacts(soundJob);
  expect(rules.flatMap((rule) => rule.check(facts).map((hit) => `${rule.id} ${hit.what}`))).toEqual([]);
});

test('a wasted visit is never judged for work that was not done, whatever else stands in its record', () => {
  const facts = soundFacts({
    ...soundJob,
    identity: { ...soundJob.identity, visit: 'wasted visit', wastedBecause: 'gate locked' },
    connections: [
      { lead: 'supply', point: 'P3', method: 'twist only', fuse: { ratingAmperes: 30, distanceMillimetres: 900 } },
    ],
    probePoints: (soundJob.probePoints ?? []).map((point) => ({
      ...point,
      sleeve: 'yellow' as const,
      twisted: true,
      verdict: 'start' as const,
    })),
  });
  expect(
    rules.filter((rule) => rule.group !== 'record').flatMap((rule) => rule.check(facts).map(() => rule.id)),
  ).toEqual([]);
});
