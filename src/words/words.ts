import type { PricingWords } from '../pricing/pricing-words.ts';
import type { Labels } from './en/labels-en.ts';
import type { Terms } from './en/terms-en.ts';
import type { EvidenceWords } from './evidence-words.ts';
import type { PageWords } from './page-words.ts';
import type { PaymentWords } from './payment-words.ts';
import type { RulesInWords } from './rules-in-words.ts';
import type { Sentences } from './sentences.ts';

/** Everything that is said in one language: a language is complete when this type compiles. */
export type Words = {
  readonly labels: Labels;
  readonly terms: Terms;
  readonly sentences: Sentences;
  readonly evidence: EvidenceWords;
  readonly rules: RulesInWords;
  readonly pricing: PricingWords;
  readonly payment: PaymentWords;
  readonly page: PageWords;
};
