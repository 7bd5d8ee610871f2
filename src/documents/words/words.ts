import { labelsEn } from './labels-en.ts';
import { labelsEs } from './labels-es.ts';
import { ruleSummariesEs } from './rule-summaries-es.ts';
import type { Sentences } from './sentences.ts';
import { sentencesEn } from './sentences-en.ts';
import { sentencesEs } from './sentences-es.ts';
import { type Terms, termsEn } from './terms-en.ts';
import { termsEs } from './terms-es.ts';

/** Languages in which documents are written. */
export type Language = 'en' | 'es';

/** Everything a document says by itself, in one language. */
export type Words = {
  readonly labels: typeof labelsEn;
  readonly terms: Terms;
  readonly sentences: Sentences;
  /** what rules say should hold, by id, where it is worded in this language */
  readonly ruleSummaries: Readonly<Record<string, string>>;
};

/** The words of each language. */
export const words: Readonly<Record<Language, Words>> = {
  en: { labels: labelsEn, terms: termsEn, sentences: sentencesEn, ruleSummaries: {} },
  es: { labels: labelsEs, terms: termsEs, sentences: sentencesEs, ruleSummaries: ruleSummariesEs },
};
