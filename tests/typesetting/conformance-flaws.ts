import {
  decodePDFRawStream,
  PDFArray,
  PDFDict,
  PDFDocument,
  PDFHexString,
  PDFName,
  PDFNumber,
  type PDFObject,
  PDFRawStream,
  PDFRef,
  PDFStream,
  PDFString,
} from 'pdf-lib';

type Element = {
  readonly dict: PDFDict;
  readonly ref: PDFRef;
  readonly role: string;
  readonly parent: string;
  readonly kids: readonly Element[];
  readonly pieces: readonly string[];
};

const standardRoles = new Set([
  'Document',
  'H1',
  'H2',
  'H3',
  'P',
  'Table',
  'THead',
  'TBody',
  'TFoot',
  'TR',
  'TH',
  'TD',
  'L',
  'LI',
  'Lbl',
  'LBody',
  'Figure',
  'Form',
]);
const childrenOf: Readonly<Record<string, readonly string[]>> = {
  Table: ['THead', 'TBody', 'TFoot'],
  THead: ['TR'],
  TBody: ['TR'],
  TFoot: ['TR'],
  TR: ['TH', 'TD'],
  L: ['LI'],
  LI: ['Lbl', 'LBody'],
};
const painting = new Set(['TJ', 'Tj', 'S', 's', 'f', 'F', 'f*', 'B', 'B*', 'b', 'b*', 'Do', 'sh']);

/**
 * What keeps a PDF from PDF/UA-1 and PDF/A-3, as far as our documents could break them; nothing where all is well.
 * Clauses: ISO 14289-1:2014 (UA), ISO 19005-3:2012 (A).
 */
export async function conformanceFlaws(bytes: Uint8Array): Promise<readonly string[]> {
  const pdf = await PDFDocument.load(bytes, { updateMetadata: false });
  const flaws: string[] = [];
  const say = (clause: string, what: string) => flaws.push(`${clause}: ${what}`);
  const { context, catalog } = pdf;
  const look = (object: PDFObject | undefined) => (object instanceof PDFRef ? context.lookup(object) : object);
  const get = (dict: PDFDict | undefined, name: string) => look(dict?.get(PDFName.of(name)));
  const dictAt = (dict: PDFDict | undefined, name: string) => {
    const found = get(dict, name);
    return found instanceof PDFStream ? found.dict : found instanceof PDFDict ? found : undefined;
  };
  const arrayAt = (dict: PDFDict | undefined, name: string): readonly PDFObject[] => {
    const found = get(dict, name);
    return found instanceof PDFArray ? found.asArray() : found === undefined ? [] : [found];
  };
  const nameAt = (dict: PDFDict | undefined, name: string) => {
    const found = get(dict, name);
    return found instanceof PDFName ? found.decodeText() : '';
  };
  const textAt = (dict: PDFDict | undefined, name: string) => {
    const found = get(dict, name);
    return found instanceof PDFString || found instanceof PDFHexString ? found.decodeText() : '';
  };
  const numberAt = (dict: PDFDict | undefined, name: string) => {
    const found = get(dict, name);
    return found instanceof PDFNumber ? found.asNumber() : null;
  };
  const decoded = (stream: PDFObject | undefined) =>
    stream instanceof PDFRawStream ? new TextDecoder('latin1').decode(decodePDFRawStream(stream).decode()) : '';

  // the document
  if (String(get(dictAt(catalog, 'MarkInfo'), 'Marked')) !== 'true') say('UA 6.2', 'MarkInfo/Marked is not true');
  if (textAt(catalog, 'Lang') === '') say('UA 7.2', 'no language');
  if (String(get(dictAt(catalog, 'ViewerPreferences'), 'DisplayDocTitle')) !== 'true')
    say('UA 7.1', 'the title is not shown');
  const metadata = get(catalog, 'Metadata');
  const xmp = metadata instanceof PDFRawStream ? new TextDecoder().decode(metadata.contents) : '';
  if (dictAt(catalog, 'Metadata')?.has(PDFName.of('Filter'))) say('A 6.6.2.1', 'the metadata are compressed');
  for (const [clause, wanted] of [
    ['A 6.6.4', '<pdfaid:part>3</pdfaid:part>'],
    ['A 6.6.4', '<pdfaid:conformance>A</pdfaid:conformance>'],
    ['UA 5', '<pdfuaid:part>1</pdfuaid:part>'],
    ['UA 7.1', '<dc:title>'],
  ] as const)
    if (!xmp.includes(wanted)) say(clause, `the metadata lack ${wanted}`);
  const intent = look(arrayAt(catalog, 'OutputIntents')[0]);
  const profile = intent instanceof PDFDict ? get(intent, 'DestOutputProfile') : undefined;
  const icc = decoded(profile);
  if (icc.slice(36, 40) !== 'acsp' || icc.slice(16, 20) !== 'RGB ') say('A 6.2.3', 'no sRGB output intent');
  const size = [...icc.slice(0, 4)].reduce((sum, each) => sum * 256 + each.charCodeAt(0), 0);
  if (size !== icc.length) say('A 6.2.3', 'the profile has another length than it says');
  const id = look(context.trailerInfo.ID);
  if (!(id instanceof PDFArray) || id.size() !== 2) say('A 6.1.3', 'no file ID');
  if (context.trailerInfo.Encrypt !== undefined) say('A 6.1.3', 'encrypted');

  // the structure
  const root = dictAt(catalog, 'StructTreeRoot');
  if (root === undefined) return [...flaws, 'UA 7.1: no structure tree'];
  const pieces = new Map<string, Element>();
  const elements: Element[] = [];
  const readElement = (object: PDFObject, parentRef: string): Element | null => {
    const dict = look(object);
    if (!(dict instanceof PDFDict) || !(object instanceof PDFRef)) return null;
    const own: string[] = [];
    const kids: Element[] = [];
    const element: Element = { dict, ref: object, role: nameAt(dict, 'S'), parent: parentRef, kids, pieces: own };
    elements.push(element);
    if (String(dict.get(PDFName.of('P'))) !== parentRef) say('UA 7.1', `a ${element.role} names another parent`);
    for (const kid of arrayAt(dict, 'K')) {
      const inside = look(kid);
      const type = inside instanceof PDFDict ? nameAt(inside, 'Type') : '';
      if (type === 'MCR' && inside instanceof PDFDict)
        own.push(`${inside.get(PDFName.of('Pg'))} ${numberAt(inside, 'MCID')}`);
      else if (type === 'OBJR' && inside instanceof PDFDict) own.push(`object ${inside.get(PDFName.of('Obj'))}`);
      else {
        const child = readElement(kid, String(object));
        if (child !== null) kids.push(child);
      }
    }
    for (const piece of own) {
      if (pieces.has(piece)) say('UA 7.1', `the piece ${piece} stands in the tree twice`);
      pieces.set(piece, element);
    }
    return element;
  };
  const rootRef = String(catalog.get(PDFName.of('StructTreeRoot')));
  const documents = arrayAt(root, 'K').map((each) => readElement(each, rootRef));
  if (documents.length !== 1 || documents[0]?.role !== 'Document')
    say('UA 7.1', 'the tree does not start with one Document');
  const nums = arrayAt(dictAt(root, 'ParentTree'), 'Nums');
  const parentTree = new Map<number, PDFObject | undefined>();
  for (let place = 0; place + 1 < nums.length; place += 2) parentTree.set(Number(String(nums[place])), nums[place + 1]);
  checkRoles();

  // the pages
  const keys = new Set<number>();
  const seen = new Set<string>();
  for (const [index, page] of pdf.getPages().entries()) {
    const { node } = page;
    if (nameAt(node, 'Tabs') !== 'S') say('UA 7.18.3', `page ${index + 1} has no Tabs S`);
    const key = numberAt(node, 'StructParents');
    if (key === null || keys.has(key)) say('UA 7.1', `page ${index + 1} has no StructParents of its own`);
    else keys.add(key);
    const owners = look(parentTree.get(key ?? -1));
    const content = arrayAt(node, 'Contents')
      .map((part) => decoded(look(part)))
      .join('\n');
    for (const number of readContent(content, index + 1)) {
      const piece = `${page.ref} ${number}`;
      const owner = owners instanceof PDFArray ? String(owners.asArray()[number]) : '';
      if (seen.has(piece)) say('UA 7.1', `page ${index + 1} marks ${number} twice`);
      seen.add(piece);
      if (!pieces.has(piece)) say('UA 7.1', `page ${index + 1} marks ${number}, which is not in the tree`);
      else if (String(pieces.get(piece)?.ref) !== owner)
        say('UA 7.1', `the parent tree leads from page ${index + 1}, ${number} elsewhere`);
    }
    for (const reference of arrayAt(node, 'Annots')) checkWidget(reference, index + 1);
    for (const [face, reference] of dictAt(node.Resources(), 'Font')?.entries() ?? [])
      checkFont(face.decodeText(), look(reference), content);
    for (const [, reference] of dictAt(node.Resources(), 'XObject')?.entries() ?? []) {
      const picture = look(reference);
      const space = picture instanceof PDFStream ? nameAt(picture.dict, 'ColorSpace') : '';
      if (!['DeviceRGB', 'DeviceGray'].includes(space)) say('A 6.2.4', `a picture in ${space}`);
    }
  }
  for (const piece of pieces.keys()) if (!seen.has(piece)) say('UA 7.1', `the tree names ${piece}, which no page has`);
  checkFiles();
  return flaws;

  function checkRoles(): void {
    let level = 0;
    for (const element of elements) {
      const { role, kids, dict } = element;
      if (!standardRoles.has(role)) say('UA 7.1', `the role ${role}`);
      const wanted = childrenOf[role];
      const wrong = wanted === undefined ? undefined : kids.find((kid) => !wanted.includes(kid.role));
      if (wrong !== undefined) say('UA 7.1', `${wrong.role} inside ${role}`);
      if (wanted !== undefined && element.pieces.length > 0) say('UA 7.1', `text directly in ${role}`);
      if (kids.length === 0 && element.pieces.length === 0 && !/^(T[DH]|TBody|Document)$/.test(role))
        say('UA 7.1', `an empty ${role}`);
      if (/^H\d$/.test(role)) {
        if (Number(role[1]) > level + 1) say('UA 7.4.2', `${role} after H${level}`);
        level = Number(role[1]);
      }
      const attributes = dictAt(dict, 'A');
      if (role === 'Figure' && textAt(dict, 'Alt').trim() === '') say('UA 7.3', 'a figure without alternative');
      if (role === 'Figure' && arrayAt(attributes, 'BBox').length !== 4) say('UA 7.3', 'a figure without its box');
      if (role === 'TH' && nameAt(attributes, 'Scope') === '') say('UA 7.5', 'a table head without scope');
      if (role === 'Table') {
        const parts = kids.map((kid) => kid.role);
        if (!parts.includes('TBody')) say('UA 7.2', 'a table without a body');
        if (parts.filter((part) => part !== 'TBody').length !== new Set(parts).size - 1)
          say('UA 7.2', 'a table with two heads or feet');
        const rows = kids.flatMap((part) => part.kids);
        const widths = rows.map((row) =>
          row.kids.reduce((sum, cell) => sum + (numberAt(dictAt(cell.dict, 'A'), 'ColSpan') ?? 1), 0),
        );
        if (new Set(widths).size > 1) say('UA 7.2', `rows of ${[...new Set(widths)].join(' and ')} cells in one table`);
      }
    }
  }

  function readContent(content: string, page: number): readonly number[] {
    const numbers: number[] = [];
    const open: string[] = [];
    for (const [operator] of content.matchAll(/\/\w+ <<.*?>> BDC|\/\w+ BMC|<[0-9a-f]*>|[^\s[\]<>]+/g)) {
      if (/BDC$|BMC$/.test(operator)) {
        if (open.length > 0) say('UA 7.1', `marked content inside of marked content on page ${page}`);
        open.push(operator);
        const number = /\/MCID (\d+)/.exec(operator)?.[1];
        if (number !== undefined) numbers.push(Number(number));
        else if (!operator.startsWith('/Artifact'))
          say('UA 7.1', `${operator} on page ${page} is neither text nor artifact`);
      } else if (operator === 'EMC') open.pop();
      else if (painting.has(operator) && open.length === 0)
        say('UA 7.1', `untagged content (${operator}) on page ${page}`);
    }
    if (open.length > 0) say('UA 7.1', `marked content left open on page ${page}`);
    return numbers;
  }

  function checkWidget(reference: PDFObject, page: number): void {
    const widget = look(reference);
    if (!(widget instanceof PDFDict)) return;
    const place = `object ${reference}`;
    const element = pieces.get(place);
    seen.add(place);
    if (element?.role !== 'Form') say('UA 7.18.4', `a field on page ${page} is in no Form`);
    if (String(parentTree.get(numberAt(widget, 'StructParent') ?? -1)) !== String(element?.ref))
      say('UA 7.18.4', `a field on page ${page} does not lead to its Form`);
    if (textAt(widget, 'TU').trim() === '') say('UA 7.18.1', `a field on page ${page} has no name for listeners`);
    if (((numberAt(widget, 'F') ?? 0) & 4) === 0) say('A 6.3.2', `a field on page ${page} is not printed`);
    if (get(dictAt(widget, 'AP'), 'N') === undefined) say('A 6.3.3', `a field on page ${page} has no appearance`);
    const fields = arrayAt(dictAt(catalog, 'AcroForm'), 'Fields').map(String);
    if (!fields.includes(String(reference))) say('A 6.4', `a field on page ${page} is not in the form`);
  }

  function checkFont(face: string, font: PDFObject | undefined, content: string): void {
    if (!(font instanceof PDFDict)) return;
    const descendant = look(arrayAt(font, 'DescendantFonts')[0]);
    const inner = descendant instanceof PDFDict ? descendant : undefined;
    if (get(dictAt(inner, 'FontDescriptor'), 'FontFile2') === undefined) say('A 6.2.11.4', `${face} is not embedded`);
    if (!/^[A-Z]{6}\+/.test(nameAt(font, 'BaseFont'))) say('A 6.2.11.4', `${face} is not named as a part of a font`);
    const map = decoded(get(font, 'ToUnicode'));
    const mapped = new Set([...map.matchAll(/^<([0-9a-f]{4})> </gm)].map((row) => row[1]));
    const widths = new Set<string>();
    for (const each of arrayAt(inner, 'W'))
      if (each instanceof PDFNumber) widths.add(each.asNumber().toString(16).padStart(4, '0'));
    for (const [, shown] of content.matchAll(new RegExp(`/${face} \\S+ Tf [^T]*?Td (\\[[^\\]]*\\]) TJ`, 'g')))
      for (const [, codes] of (shown ?? '').matchAll(/<([0-9a-f]+)>/g))
        for (const code of (codes ?? '').match(/.{4}/g) ?? []) {
          if (code === '0000') say('A 6.2.11.8', `a box instead of a sign in ${face}`);
          if (!mapped.has(code)) say('UA 7.21.7', `a glyph of ${face} without its letter`);
          if (!widths.has(code)) say('A 6.2.11.5', `a glyph of ${face} without its width`);
        }
  }

  function checkFiles(): void {
    for (const reference of arrayAt(catalog, 'AF')) {
      const file = look(reference);
      if (!(file instanceof PDFDict)) continue;
      const stream = get(dictAt(file, 'EF'), 'F');
      const dict = stream instanceof PDFStream ? stream.dict : undefined;
      if (nameAt(file, 'AFRelationship') === '') say('A 6.8', 'a file without its relationship');
      if (textAt(file, 'UF') === '' || get(file, 'F') === undefined) say('A 6.8', 'a file without its name');
      if (nameAt(dict, 'Subtype') === '') say('A 6.8', 'a file without its type');
      if (get(dictAt(dict, 'Params'), 'ModDate') === undefined) say('A 6.8', 'a file without its date');
    }
    if (dictAt(catalog, 'Names') !== undefined && arrayAt(catalog, 'AF').length === 0)
      say('A 6.8', 'a file that belongs to nothing');
    for (const [, object] of context.enumerateIndirectObjects())
      if (object instanceof PDFDict && /^(JavaScript|Launch|URI|GoToR)$/.test(nameAt(object, 'S')))
        say('A 6.5', `an action ${nameAt(object, 'S')}`);
  }
}
