import type { Words } from '../words.ts';
import { evidenceWordsEn } from './evidence-words-en.ts';
import { labelsEn } from './labels-en.ts';
import { pageWordsEn } from './page-words-en.ts';
import { paymentWordsEn } from './payment-words-en.ts';
import { pricingWordsEn } from './pricing-words-en.ts';
import { rulesEn } from './rules-en.ts';
import { sentencesEn } from './sentences-en.ts';
import { termsEn } from './terms-en.ts';

/** Everything that is said in English. */
export const en: Words = {
  labels: labelsEn,
  terms: termsEn,
  sentences: sentencesEn,
  evidence: evidenceWordsEn,
  rules: rulesEn,
  pricing: pricingWordsEn,
  payment: paymentWordsEn,
  page: pageWordsEn,
};
