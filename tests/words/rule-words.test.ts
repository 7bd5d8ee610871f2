import { describe, expect, test } from 'vitest';
import { type Language, languages } from '../../src/records/language.ts';
import { checkJob } from '../../src/rules/check-job.ts';
import { rules } from '../../src/rules/index.ts';
import { soundFacts, soundJob } from '../../src/rules/sound-job.ts';
import { sayFinding, saySummary, sayWhy } from '../../src/words/say-finding.ts';
import { speechFor } from '../../src/words/speech-for.ts';
import { wordsIn } from '../../src/words/words-in.ts';

const day = (date: string) => date;
const speechIn = (language: Language, mark: '.' | ',') =>
  speechFor(wordsIn(language), soundFacts(soundJob).job.vehicle, { mark, minus: '-', gap: ' ', day });
const english = speechIn('en', '.');
const others = languages.filter((language) => language !== 'en');

/** Numbers of a text, in order of size, whatever their decimal sign; numbers written as words count too. */
const numbersIn = (text: string) =>
  (text.replace(/(?<!\p{L})(?:ten|diez|zehn)(?!\p{L})/gu, '10').match(/\d+(?:[.,]\d+)?/g) ?? [])
    .map((number) => number.replace(',', '.'))
    .sort();

/** Every finding that the examples of the rules lead to. */
const found = rules.flatMap((rule) =>
  rule.examples.flatMap((example) =>
    checkJob(soundFacts(example.change(soundJob), example.facts))
      .filter((finding) => finding.rule === rule.id)
      .map((finding) => [rule.id, finding.says, finding] as const),
  ),
);

describe.each(others)('in the language %s', (language) => {
  const words = wordsIn(language);
  const speech = speechIn(language, ',');

  test.each(found)('%s, %s: says the same figures as in English', (_rule, _says, finding) => {
    const own = sayFinding(finding, words.rules, speech);
    const their = sayFinding(finding, wordsIn('en').rules, english);
    for (const part of ['what', 'whatToDo'] as const) {
      expect(numbersIn(own[part])).toEqual(numbersIn(their[part]));
      expect(own[part]).not.toBe(their[part]);
      expect(own[part]).toMatch(/[.!]$/);
      expect(own[part]).not.toMatch(/undefined|null|NaN|\[object|\s{2}/);
      // a decimal point would be read as a separator of thousands
      expect(own[part].replace(/\d+ CFR [\d.]+|\bMOT\b/g, '')).not.toMatch(/\d\.\d/);
    }
  });

  test.each(rules.map((rule) => [rule.id] as const))('%s: says what should hold, and why', (id) => {
    const summary = saySummary(id, words.rules, speech);
    expect(numbersIn(summary)).toEqual(numbersIn(saySummary(id, wordsIn('en').rules, english)));
    expect(summary).not.toBe(saySummary(id, wordsIn('en').rules, english));
    expect(sayWhy(id, words.rules)).toMatch(/^\p{Lu}.*\.$/u);
    expect(sayWhy(id, words.rules)).not.toBe(sayWhy(id, wordsIn('en').rules));
  });
});

test('every message of every rule is shown by an example', () => {
  const shown = new Set(found.map(([rule, says]) => `${rule}: ${says}`));
  const all = rules.flatMap((rule) => Object.keys(rule.words.says).map((says) => `${rule.id}: ${says}`));
  expect(all.filter((each) => !shown.has(each))).toEqual([]);
});
