import { labelsEn } from './en/labels-en.ts';
import { sentencesEn } from './en/sentences-en.ts';
import { type Terms, termsEn } from './en/terms-en.ts';
import { labelsEs } from './es/labels-es.ts';
import { ruleSummariesEs } from './es/rule-summaries-es.ts';
import { sentencesEs } from './es/sentences-es.ts';
import { termsEs } from './es/terms-es.ts';
import type { Sentences } from './sentences.ts';

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
