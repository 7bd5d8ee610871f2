import { type CreditNoteInput, makeCreditNote as makeWordedCreditNote } from '../../src/pricing/make-credit-note.ts';
import { type InvoiceInput, makeInvoice as makeWordedInvoice } from '../../src/pricing/make-invoice.ts';
import { type PricingInput, priceJob as priceWordedJob } from '../../src/pricing/price-job.ts';
import type { Wording } from '../../src/pricing/pricing-words.ts';
import { documentLanguage, type Language } from '../../src/records/language.ts';
import { wordsIn } from '../../src/words/words-in.ts';

/** A language with its words for lines of an invoice. */
export const wordingIn = (language: Language): Wording => ({ language, words: wordsIn(language).pricing });

/** A job priced in a language, or in that of its book. */
export const priceJob = ({ language, ...input }: Omit<PricingInput, 'wording'> & { readonly language?: Language }) =>
  priceWordedJob({ ...input, wording: wordingIn(language ?? input.book.language) });

/** An invoice in the language of its payer, or in that of its book. */
export const makeInvoice = (input: Omit<InvoiceInput, 'wording'>) =>
  makeWordedInvoice({ ...input, wording: wordingIn(documentLanguage(input.payer, input.book)) });

/** A credit note in the language of its invoice. */
export const makeCreditNote = (input: Omit<CreditNoteInput, 'wording'>) =>
  makeWordedCreditNote({ ...input, wording: wordingIn(input.invoice.language) });
