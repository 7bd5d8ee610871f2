import { expect, test } from 'vitest';
import { askPayer, shortName } from '../../src/prompts/ask-payer.ts';
import { type Ask, storedOf } from '../../src/prompts/question.ts';
import { soundFacts, soundJob } from '../../src/rules/sound-job.ts';

test.each([
  ['Skånsk Øst & Søn', 'skansk-ost-son'],
  ['Łódź Spedycja', 'lodz-spedycja'],
  ['Großmann Straße', 'grossmann-strasse'],
  ['Ærø Færgefart', 'aero-faergefart'],
  ['東京', 'payer'],
  ['---', 'payer'],
])('%s gets the short name %s', (name, expected) => {
  expect(shortName(name, [])).toBe(expected);
  expect(shortName(name, [expected])).toBe(`${expected}-2`);
});

const answering = (answers: Readonly<Record<string, string>>): Ask => ({
  text: async (message, usual) => answers[message] ?? (usual === '' ? 'Somewhere 1' : usual),
  choose: async (message, choices, usual) => choices.map(storedOf).find((value) => value === answers[message]) ?? usual,
  confirm: async (_message, usual) => usual,
  decide: async () => false,
  tick: async (_message, _items, usual) => usual,
});

test('a payer’s documents are in the language chosen for it, or in the book’s', async () => {
  const { book } = soundFacts(soundJob);
  const common = { 'Country, two letters': 'US', 'State or region': 'CO' };
  const german = await askPayer(answering({ ...common, 'Language of its documents': 'de' }), [], null, book);
  expect(german.language).toBe('de');
  const kept = await askPayer(answering(common), [], german, book);
  expect(kept.language).toBe('de');
  const asBook = await askPayer(
    answering({ ...common, 'Language of its documents': 'as the book says' }),
    [],
    german,
    book,
  );
  expect(asBook.language).toBeUndefined();
});
