import { evidenceWordsEn } from './en/evidence-words-en.ts';
import { labelsEn } from './en/labels-en.ts';
import { rulesEn } from './en/rules-en.ts';
import { sentencesEn } from './en/sentences-en.ts';
import { type Terms, termsEn } from './en/terms-en.ts';
import { evidenceWordsEs } from './es/evidence-words-es.ts';
import { labelsEs } from './es/labels-es.ts';
import { rulesEs } from './es/rules/rules-es.ts';
import { sentencesEs } from './es/sentences-es.ts';
import { termsEs } from './es/terms-es.ts';
import type { EvidenceWords } from './evidence-words.ts';
import type { RulesInWords } from './rules-in-words.ts';
import type { Sentences } from './sentences.ts';

/** Languages in which documents are written. */
export type Language = 'en' | 'es';

/** Everything that is said in one language. */
export type Words = {
  readonly labels: typeof labelsEn;
  readonly terms: Terms;
  readonly sentences: Sentences;
  readonly evidence: EvidenceWords;
  readonly rules: RulesInWords;
};

/** The words of each language. */
export const words: Readonly<Record<Language, Words>> = {
  en: { labels: labelsEn, terms: termsEn, sentences: sentencesEn, evidence: evidenceWordsEn, rules: rulesEn },
  es: { labels: labelsEs, terms: termsEs, sentences: sentencesEs, evidence: evidenceWordsEs, rules: rulesEs },
};
