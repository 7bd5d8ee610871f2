import type { Words } from '../words.ts';
import { evidenceWordsDe } from './evidence-words-de.ts';
import { labelsDe } from './labels-de.ts';
import { pageWordsDe } from './page-words-de.ts';
import { paymentWordsDe } from './payment-words-de.ts';
import { pricingWordsDe } from './pricing-words-de.ts';
import { rulesDe } from './rules/rules-de.ts';
import { sentencesDe } from './sentences-de.ts';
import { termsDe } from './terms-de.ts';

/** Everything that is said in German. */
export const de: Words = {
  labels: labelsDe,
  terms: termsDe,
  sentences: sentencesDe,
  evidence: evidenceWordsDe,
  rules: rulesDe,
  pricing: pricingWordsDe,
  payment: paymentWordsDe,
  page: pageWordsDe,
};
