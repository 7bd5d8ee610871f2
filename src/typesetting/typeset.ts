import { Problem } from '../problem.ts';
import { checkCharacters } from './fonts/check-characters.ts';
import { type FontBytes, faces } from './fonts/faces.ts';
import { type Fonts, fontMetrics } from './fonts/font-metrics.ts';
import { parseFont } from './fonts/parse-font.ts';
import { layOut } from './layout/lay-out.ts';
import type { Page } from './layout/page.ts';
import { pageText } from './layout/page-text.ts';
import type { StructureElement } from './layout/structure.ts';
import { fillTemplate } from './markup/fill-template.ts';
import { parseMarkup } from './markup/parse-markup.ts';
import { type Attachment, drawPdf } from './pdf/draw-pdf.ts';
import type { MetadataSchema } from './pdf/xmp.ts';

export type Typesetting = {
  readonly template: string;
  readonly templateName: string;
  readonly partials: Readonly<Record<string, string>>;
  readonly view: object;
  readonly fonts: FontBytes;
  /** JPEG (sRGB, upright) or PNG bytes by the name that the markup's <image src> gives */
  readonly images?: Readonly<Record<string, Uint8Array>>;
  /** files that the PDF carries inside */
  readonly attachments?: readonly Attachment[];
  /** schemas of other standards for the metadata, such as the one that names an invoice's structured file */
  readonly metadataSchemas?: readonly MetadataSchema[];
  readonly title: string;
  readonly author: string;
  readonly language: string;
  /** calendar date written into the PDF */
  readonly created: string;
  /** 32 or more hexadecimal digits that identify the content */
  readonly identity: string;
};
export type Typeset = {
  readonly pdf: Uint8Array;
  readonly pages: readonly Page[];
  readonly elements: readonly StructureElement[];
  readonly text: string;
};

const pagesMax = 200;

/**
 * A template and a view made into a PDF: fill, parse, lay out, draw.
 * @param job template, view, fonts, pictures, attached files and what the document says of itself
 * @throws Problem for a mistake in the template, a character no font has, a picture that cannot be shown or more than 200 pages
 */
export async function typeset(job: Typesetting): Promise<Typeset> {
  const { templateName, images = {}, attachments = [], metadataSchemas = [] } = job;
  const fonts = Object.fromEntries(faces.map((face) => [face, parseFont(job.fonts[face])])) as Fonts;
  const metrics = fontMetrics(fonts);
  const tree = parseMarkup(fillTemplate(job.template, templateName, job.partials, job.view), templateName);
  checkCharacters(tree, metrics, templateName);
  const { pages, elements } = layOut(tree, metrics, images, templateName);
  if (pages.length > pagesMax)
    throw new Problem(`The document has more than ${pagesMax} pages.`, templateName, 'Shorten the notes.');
  const pdf = await drawPdf({ ...job, pages, elements, fonts, images, attachments, schemas: metadataSchemas });
  return { pdf, pages, elements, text: pageText(pages) };
}
