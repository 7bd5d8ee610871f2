import type { Words } from '../words.ts';
import { evidenceWordsEs } from './evidence-words-es.ts';
import { labelsEs } from './labels-es.ts';
import { pageWordsEs } from './page-words-es.ts';
import { paymentWordsEs } from './payment-words-es.ts';
import { pricingWordsEs } from './pricing-words-es.ts';
import { rulesEs } from './rules/rules-es.ts';
import { sentencesEs } from './sentences-es.ts';
import { termsEs } from './terms-es.ts';

/** Everything that is said in Spanish. */
export const es: Words = {
  labels: labelsEs,
  terms: termsEs,
  sentences: sentencesEs,
  evidence: evidenceWordsEs,
  rules: rulesEs,
  pricing: pricingWordsEs,
  payment: paymentWordsEs,
  page: pageWordsEs,
};
