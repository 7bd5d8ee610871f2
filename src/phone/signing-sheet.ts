import type { Language } from '../records/language.ts';

/** What the customer reads before signing: the essentials of the handover sheet, in the order of the page. */
export type SigningSheet = {
  /** the language of all words, as in the page's `lang` */
  readonly language: Language;
  /** "Handover sheet 2026-11-24-KX4D" */
  readonly title: string;
  readonly business: string;
  readonly facts: readonly { readonly name: string; readonly value: string }[];
  readonly sections: readonly {
    readonly heading: string;
    readonly paragraphs: readonly string[];
    readonly items: readonly string[];
  }[];
  /** what a signature means, and what is kept of it */
  readonly statement: string;
  /** "record 1a2b3c…": the digest of the record that the page was made from */
  readonly record: string;
};

/**
 * The words of a sheet exactly as the page shows them, line by line; their digest goes into the signature.
 * @param sheet the sheet
 */
export function shownText(sheet: SigningSheet): string {
  const lines = [
    sheet.title,
    sheet.business,
    ...sheet.facts.map(({ name, value }) => `${name}: ${value}`),
    ...sheet.sections.flatMap(({ heading, paragraphs, items }) => [
      '',
      heading,
      ...paragraphs,
      ...items.map((item) => `- ${item}`),
    ]),
    '',
    sheet.statement,
    sheet.record,
  ];
  return `${lines.join('\n')}\n`;
}
