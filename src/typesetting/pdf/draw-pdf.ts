import { PDFDocument, PDFHexString, PDFName, type PDFRef, PDFString } from 'pdf-lib';
import { Problem } from '../../problem.ts';
import { type Face, faces } from '../fonts/faces.ts';
import { foldedHash } from '../fonts/folded-hash.ts';
import type { Fonts } from '../fonts/font-metrics.ts';
import { imageSize } from '../layout/image-size.ts';
import type { Mark, Page } from '../layout/page.ts';
import type { StructureElement } from '../layout/structure.ts';
import { digits } from './digits.ts';
import { drawContent } from './draw-content.ts';
import { type FontInUse, fontInUse } from './embed-font.ts';
import { srgbProfile } from './srgb-profile.ts';
import { type DrawnField, type DrawnPage, writeStructure } from './write-structure.ts';
import { type MetadataSchema, xmpPacket } from './xmp.ts';

/** A file inside the PDF, and what it is to the document (ISO 19005-3, 6.8). */
export type Attachment = {
  readonly name: string;
  readonly bytes: Uint8Array;
  readonly mimeType: string;
  readonly description: string;
  readonly relationship: 'Alternative' | 'Data' | 'Source' | 'Supplement' | 'Unspecified';
};
export type Drawing = {
  readonly pages: readonly Page[];
  readonly elements: readonly StructureElement[];
  readonly fonts: Fonts;
  readonly images: Readonly<Record<string, Uint8Array>>;
  readonly attachments: readonly Attachment[];
  readonly schemas: readonly MetadataSchema[];
  readonly title: string;
  readonly author: string;
  readonly language: string;
  readonly created: string;
  readonly identity: string;
};
type Field = Extract<Mark, { kind: 'field' }>;

/**
 * PDF bytes from finished pages: tagged (PDF/UA-1) and to be archived (PDF/A-3); the same pages give the same bytes.
 * @param drawing pages, structure, fonts, pictures and what the document says of itself
 * @throws Problem for a picture that cannot be read
 */
export async function drawPdf(drawing: Drawing): Promise<Uint8Array> {
  const pdf = await PDFDocument.create({ updateMetadata: false });
  const { context } = pdf;
  const moment = new Date(`${drawing.created}T00:00:00Z`);
  const fonts = new Map<Face, FontInUse>();
  const show = (text: string, face: Face) => {
    const known = fonts.get(face) ?? fontInUse(drawing.fonts[face]);
    fonts.set(face, known);
    return known.show(text);
  };
  const pictures = await embedPictures(pdf, drawing);
  const pictureName = (name: string) => `Picture${[...pictures.keys()].indexOf(name)}`;
  const resources = context.nextRef();
  const drawn: DrawnPage[] = [];
  const fields: DrawnField[] = [];
  let contents = '';
  for (const page of drawing.pages) {
    const sheet = pdf.addPage([page.width, page.height]);
    const content = drawContent(page, drawing.elements, { show, pictureName });
    contents += content.operators;
    sheet.node.set(PDFName.of('Contents'), context.register(context.flateStream(content.operators)));
    sheet.node.set(PDFName.of('Resources'), resources);
    sheet.node.set(PDFName.of('StructParents'), context.obj(drawn.length));
    sheet.node.set(PDFName.of('Tabs'), PDFName.of('S'));
    drawn.push({ page, ref: sheet.ref, owners: content.owners });
    const marks = page.marks.filter((mark): mark is Field => mark.kind === 'field');
    const widgets = marks.map((mark, index) => {
      const key = drawing.pages.length + fields.length + index;
      return { ref: widget(pdf, mark, page, sheet.ref, key), pageRef: sheet.ref, element: Number(mark.element) };
    });
    fields.push(...widgets);
    if (widgets.length > 0) sheet.node.set(PDFName.of('Annots'), context.obj(widgets.map((each) => each.ref)));
  }
  const fontRefs = faces.flatMap((face) => {
    const font = fonts.get(face);
    return font === undefined ? [] : [[face, font.embed(context)] as const];
  });
  context.assign(
    resources,
    context.obj({
      Font: Object.fromEntries(fontRefs),
      XObject: Object.fromEntries([...pictures].map(([name, ref]) => [pictureName(name), ref])),
    }),
  );
  for (const file of drawing.attachments)
    await pdf.attach(file.bytes, file.name, {
      mimeType: file.mimeType,
      description: file.description,
      afRelationship: file.relationship as never,
      creationDate: moment,
      modificationDate: moment,
    });
  describeDocument(pdf, drawing, moment);
  pdf.catalog.set(PDFName.of('StructTreeRoot'), writeStructure(context, drawing.elements, drawn, fields));
  if (fields.length > 0)
    pdf.catalog.set(PDFName.of('AcroForm'), context.obj({ Fields: fields.map((each) => each.ref), SigFlags: 0 }));
  const first = PDFHexString.of(drawing.identity.slice(0, 32));
  const second = PDFHexString.of(foldedHash(contents + drawing.identity));
  context.trailerInfo.ID = context.obj([first, second]);
  return pdf.save({ updateFieldAppearances: false, objectsPerTick: Number.POSITIVE_INFINITY });
}

function describeDocument(pdf: PDFDocument, drawing: Drawing, moment: Date): void {
  const { context, catalog } = pdf;
  pdf.setTitle(drawing.title, { showInWindowTitleBar: true });
  pdf.setAuthor(drawing.author);
  pdf.setProducer('keyout');
  pdf.setCreator('keyout');
  pdf.setLanguage(drawing.language);
  pdf.setCreationDate(moment);
  pdf.setModificationDate(moment);
  catalog.set(PDFName.of('MarkInfo'), context.obj({ Marked: true }));
  const packet = xmpPacket({ ...drawing, created: `${drawing.created}T00:00:00Z` });
  const metadata = context.stream(new TextEncoder().encode(packet), { Type: 'Metadata', Subtype: 'XML' });
  catalog.set(PDFName.of('Metadata'), context.register(metadata));
  const profile = context.register(context.flateStream(srgbProfile(), { N: 3 }));
  const condition = PDFString.of('sRGB IEC61966-2.1');
  const intent = {
    Type: 'OutputIntent',
    S: 'GTS_PDFA1',
    OutputConditionIdentifier: condition,
    Info: condition,
    DestOutputProfile: profile,
  };
  catalog.set(PDFName.of('OutputIntents'), context.obj([intent]));
}

async function embedPictures(pdf: PDFDocument, drawing: Drawing): Promise<ReadonlyMap<string, PDFRef>> {
  const refs = new Map<string, PDFRef>();
  for (const mark of drawing.pages.flatMap((page) => page.marks)) {
    if (mark.kind !== 'image' || refs.has(mark.name)) continue;
    const bytes = drawing.images[mark.name] ?? new Uint8Array();
    try {
      const picture = imageSize(bytes)?.format === 'png' ? await pdf.embedPng(bytes) : await pdf.embedJpg(bytes);
      await picture.embed();
      refs.set(mark.name, picture.ref);
    } catch {
      throw new Problem(`The picture "${mark.name}" is damaged.`, drawing.title, 'Take or save the picture again.');
    }
  }
  return refs;
}

// an unsigned field shows nothing; archives still want an appearance, and a screen reader its name
function widget(pdf: PDFDocument, mark: Field, page: Page, pageRef: PDFRef, key: number): PDFRef {
  const { context } = pdf;
  const number = (value: number) => Number(digits(value));
  const appearance = context.register(
    context.stream('', { Type: 'XObject', Subtype: 'Form', BBox: [0, 0, number(mark.width), number(mark.height)] }),
  );
  const bottom = page.height - mark.y - mark.height;
  return context.register(
    context.obj({
      Type: 'Annot',
      Subtype: 'Widget',
      FT: 'Sig',
      T: PDFHexString.fromText(mark.name),
      TU: PDFHexString.fromText(mark.label),
      Rect: [mark.x, bottom, mark.x + mark.width, bottom + mark.height].map(number),
      F: 4,
      P: pageRef,
      StructParent: key,
      AP: { N: appearance },
    }),
  );
}
