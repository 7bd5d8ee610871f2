import { z } from 'zod';

/** Languages in which documents are written; each has a folder in the words room. */
export const languages = ['en', 'es', 'de'] as const;
export const language = z.enum(languages);
export type Language = z.infer<typeof language>;

/**
 * The language of a document: its payer's where the payer has one, else the business's.
 * @param payer who pays, or null where nobody is named
 * @param book the business
 */
export function documentLanguage(
  payer: { readonly language?: Language | undefined } | null,
  book: { readonly language: Language },
): Language {
  return payer?.language ?? book.language;
}
