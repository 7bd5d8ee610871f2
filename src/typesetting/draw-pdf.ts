import { PDFDocument, type PDFFont, PDFHexString, type PDFPage, rgb } from 'pdf-lib';
import { type Face, type FontBytes, faces, type Mark, type Page } from './page.ts';

type Fontkit = Parameters<PDFDocument['registerFontkit']>[0];
export type Drawing = {
  readonly pages: readonly Page[];
  readonly fonts: FontBytes;
  readonly fontkit: Fontkit;
  readonly title: string;
  readonly author: string;
  readonly language: string;
  readonly created: string;
  readonly identity: string;
};

function colour(hex: string) {
  const part = (from: number) => Number.parseInt(hex.slice(from, from + 2), 16) / 255;
  return rgb(part(1), part(3), part(5));
}

/**
 * PDF bytes from finished pages; the same pages give the same bytes.
 * @param drawing pages, fonts and what the document says of itself
 */
export async function drawPdf(drawing: Drawing): Promise<Uint8Array> {
  const pdf = await PDFDocument.create({ updateMetadata: false });
  pdf.registerFontkit(drawing.fontkit);
  const moment = new Date(`${drawing.created}T00:00:00Z`);
  pdf.setTitle(drawing.title, { showInWindowTitleBar: true });
  pdf.setAuthor(drawing.author);
  pdf.setProducer('keyout');
  pdf.setCreator('keyout');
  pdf.setLanguage(drawing.language);
  pdf.setCreationDate(moment);
  pdf.setModificationDate(moment);
  const used = new Set(
    drawing.pages.flatMap((page) => page.marks.flatMap((mark) => (mark.kind === 'text' ? [mark.face] : []))),
  );
  const embedded = new Map<Face, PDFFont>();
  for (const face of faces)
    if (used.has(face))
      embedded.set(face, await pdf.embedFont(drawing.fonts[face], { subset: true, customName: `KEYOUT+${face}` }));
  for (const page of drawing.pages) {
    const sheet = pdf.addPage([page.width, page.height]);
    for (const mark of page.marks) draw(mark, sheet, page.height, embedded);
  }
  const id = PDFHexString.of(drawing.identity.slice(0, 32));
  pdf.context.trailerInfo.ID = pdf.context.obj([id, id]);
  return pdf.save({ updateFieldAppearances: false });
}

function draw(mark: Mark, sheet: PDFPage, height: number, fonts: ReadonlyMap<Face, PDFFont>): void {
  if (mark.kind === 'text') {
    const font = fonts.get(mark.face);
    if (font !== undefined) sheet.drawText(mark.text, { x: mark.x, y: height - mark.y, size: mark.size, font });
  } else if (mark.kind === 'line') {
    sheet.drawLine({
      start: { x: mark.x, y: height - mark.y },
      end: { x: mark.toX, y: height - mark.toY },
      thickness: mark.weight,
      color: colour(mark.colour),
    });
  } else {
    const stroke = mark.weight > 0 ? { borderWidth: mark.weight, borderColor: rgb(0, 0, 0) } : {};
    const fill = mark.fill === '' ? {} : { color: colour(mark.fill) };
    if (mark.kind === 'rect')
      sheet.drawRectangle({
        x: mark.x,
        y: height - mark.y - mark.height,
        width: mark.width,
        height: mark.height,
        ...stroke,
        ...fill,
      });
    else sheet.drawCircle({ x: mark.x, y: height - mark.y, size: mark.radius, ...stroke, ...fill });
  }
}
