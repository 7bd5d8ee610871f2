import * as fontkit from 'fontkit';
import { Problem } from '../problem.ts';
import { drawPdf } from './draw-pdf.ts';
import { fillTemplate } from './fill-template.ts';
import { fontMetrics, type MeasuredFont } from './font-metrics.ts';
import { layOut } from './lay-out.ts';
import { type Face, type FontBytes, faces, type Page } from './page.ts';
import { pageText } from './page-text.ts';
import { parseMarkup } from './parse-markup.ts';

export type Typesetting = {
  readonly template: string;
  readonly templateName: string;
  readonly partials: Readonly<Record<string, string>>;
  readonly view: object;
  readonly fonts: FontBytes;
  /** JPEG (sRGB, upright) or PNG bytes by the name that the template gives */
  readonly images?: Readonly<Record<string, Uint8Array>>;
  readonly title: string;
  readonly author: string;
  readonly language: string;
  /** calendar date written into the PDF */
  readonly created: string;
  /** 32 or more hexadecimal digits that identify the content */
  readonly identity: string;
};

type AnyFont = { createSubset: () => { encode: () => Uint8Array; encodeStream?: () => unknown } } & MeasuredFont;

// pdf-lib expects the stream of an older fontkit: hand it the bytes of the present one
function fontFor(bytes: Uint8Array): AnyFont {
  const font = fontkit.create(bytes) as unknown as AnyFont;
  const createSubset = font.createSubset.bind(font);
  font.createSubset = () => {
    const subset = createSubset();
    subset.encodeStream = () => {
      const stream = {
        on: (event: string, tell: (part?: Uint8Array) => void) => {
          if (event === 'data') tell(subset.encode());
          if (event === 'end') tell();
          return stream;
        },
      };
      return stream;
    };
    return subset;
  };
  return font;
}

/**
 * A template and a view made into a PDF: fill, parse, lay out, draw.
 * @param job template, view, fonts and what the document says of itself
 * @throws Problem for a mistake in the template or a sign no font has
 */
export async function typeset(
  job: Typesetting,
): Promise<{ readonly pdf: Uint8Array; readonly pages: readonly Page[]; readonly text: string }> {
  const measured = Object.fromEntries(faces.map((face) => [face, fontFor(job.fonts[face])])) as unknown as Record<
    Face,
    MeasuredFont
  >;
  const tree = parseMarkup(fillTemplate(job.template, job.templateName, job.partials, job.view), job.templateName);
  const pages = layOut(tree, fontMetrics(measured));
  if (pages.length > 200)
    throw new Problem('The document has more than 200 pages.', job.templateName, 'Shorten the notes.');
  const pdf = await drawPdf({
    ...job,
    pages,
    fontkit: { create: fontFor } as unknown as Parameters<typeof drawPdf>[0]['fontkit'],
  });
  return { pdf, pages, text: pageText(pages) };
}
