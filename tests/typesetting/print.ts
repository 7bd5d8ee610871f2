import { readFonts } from '../../src/storage/fonts.ts';
import { type Typesetting, typeset } from '../../src/typesetting/typeset.ts';

/** Markup printed as a document, with what every test document says of itself. */
export function print(markup: string, more: Partial<Typesetting> = {}) {
  return typeset({
    template: markup,
    templateName: 'test.hbs',
    partials: {},
    view: {},
    fonts: readFonts(),
    title: 'A test document',
    author: 'Ada Quill',
    language: 'en',
    created: '2026-11-25',
    identity: '0123456789abcdef0123456789abcdef',
    ...more,
  });
}

/** A text as markup may hold it. */
export function escaped(text: string): string {
  return text.replace(/[&<>"{}\\]/g, (sign) => `&#${sign.codePointAt(0)};`);
}
