import type { Language } from '../records/language.ts';
import { de } from './de/de.ts';
import { en } from './en/en.ts';
import { es } from './es/es.ts';
import type { Words } from './words.ts';

/** The words of each language of the list in records. */
const all: Readonly<Record<Language, Words>> = { en, es, de };

/** Everything that is said in one language. */
export function wordsIn(language: Language): Words {
  return all[language];
}
