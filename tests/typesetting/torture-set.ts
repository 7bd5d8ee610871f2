import sharp from 'sharp';
import type { Typesetting } from '../../src/typesetting/typeset.ts';
import { escaped } from './print.ts';

export type Torture = { readonly name: string; readonly markup: string; readonly more?: Partial<Typesetting> };

const footer =
  '<footer><p size="note">a record · keep with the papers</p><p size="note" align="right">page <page-number/> of <page-count/></p></footer>';
const page = (inside: string, paper = 'letter') =>
  `<document title="Torture" lang="en" paper="${paper}" accent="#1f4e79">${footer}<h1>Torture</h1><rule weight="1" colour="accent"/>${inside}</document>`;

// made-up names: letters of each alphabet with their accents
const names = {
  Greek: 'Ευάγγελος Παπαδημητρακόπουλος, Όδος Ἀθηνῶν 12',
  Cyrillic: 'Щербатов Объездчик Жульєн Їжакович, вулиця Ґонти',
  Vietnamese: 'Nguyễn Thị Ngọc Ánh, Đường Trần Hưng Đạo, Quận Mười',
  Polish: 'Łukasz Źdźbłowski-Żółć',
  'in parts': 'Zoe\u0308 Nguye\u0302\u0303n x\u0301\u0302 (accents that stand apart)',
};

const lines = (count: number) =>
  `<table widths="6 1 2 2" caption="Lines"><thead><tr><th scope="col">What</th><th scope="col" align="right">Quantity</th><th scope="col" align="right">Price</th><th scope="col" align="right">Amount</th></tr></thead><tbody>${Array.from(
    { length: count },
    (_, index) =>
      `<tr><td><p face="condensed">Line ${index + 1}</p><p size="note" face="condensed">because of a reason that takes some room ${'and more room '.repeat(index % 7)}</p></td><td align="right">${index}</td><td align="right">$${index * 7}.50</td><td align="right">$${index * index}.00</td></tr>`,
  ).join('')}</tbody><tfoot><tr><th scope="row" span="3">Total</th><td align="right">$1.00</td></tr></tfoot></table>`;

const figure = `<figure alt="A supply wire joined to the lead, with a fuse" width="120" height="30"><line x1="0" y1="10" x2="100" y2="10" weight="0.8"/><rect x="40" y="8" width="12" height="4" fill="white"/><circle cx="20" cy="10" r="1" fill="black"/><polyline points="100,10 105,5 110,10" weight="0.8"/><path d="M 5 20 C 10 15 15 15 20 20 S 30 25 35 20 L 40 20 Z" weight="0.5" fill="light"/><label x="46" y="16" align="centre">fuse 3 A</label><label x="100" y="16" weight="bold" width="20">a lead with a long name</label></figure>`;

const strokes = Array.from({ length: 60 }, (_, step) => `${step},${(10 + 6 * Math.sin(step / 3)).toFixed(2)}`).join(
  ' ',
);
const signatures = `<keep with-previous="yes"><h2>Signatures</h2><figure alt="Signature of Ada Quill, drawn on a screen" width="70" height="20"><polyline points="${strokes}" weight="0.7"/></figure><columns widths="6 6"><column><signature-field name="customer" label="Customer: name, date and time" width="80" height="12"/></column><column><signature-field name="installer" label="Installer" width="80" height="12"/></column></columns></keep>`;

async function photograph(index: number, format: 'jpeg' | 'png'): Promise<Uint8Array> {
  const [width, height] = index % 3 === 0 ? [90, 160] : [160, 120];
  const stripes = `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}"><rect width="100%" height="100%" fill="rgb(${index * 9},120,${255 - index * 9})"/><circle cx="60" cy="60" r="${20 + index}" fill="white" fill-opacity="0.5"/></svg>`;
  const picture = sharp(Buffer.from(stripes));
  return format === 'jpeg' ? await picture.jpeg().toBuffer() : await picture.png().toBuffer();
}

async function photographs(): Promise<Torture> {
  const images: Record<string, Uint8Array> = {};
  const cells: string[] = [];
  for (let index = 0; index < 24; index += 1) {
    // the last four are PNG with partly transparent places
    images[`photo-${index}`] = await photograph(index, index < 20 ? 'jpeg' : 'png');
    cells.push(
      `<column><image src="photo-${index}" alt="Photograph ${index + 1}: the place after the work" width="85" height-max="55"/><p size="note">${index + 1}. The place after the work</p></column>`,
    );
  }
  const pairs = cells.flatMap((cell, index) =>
    index % 2 === 0 ? [`<columns widths="1 1" space-before="2">${cell}${cells[index + 1]}</columns>`] : [],
  );
  return { name: '24 photographs', markup: page(`<h2>Photographs</h2>${pairs.join('')}`), more: { images } };
}

const invoiceFile: Partial<Typesetting> = {
  attachments: [
    {
      name: 'factur-x.xml',
      bytes: new TextEncoder().encode('<?xml version="1.0" encoding="UTF-8"?><invoice/>'),
      mimeType: 'text/xml',
      description: 'The invoice as a structured file',
      relationship: 'Alternative',
    },
  ],
  metadataSchemas: [
    {
      schema: 'Factur-X PDFA Extension Schema',
      namespace: 'urn:factur-x:pdfa:CrossIndustryDocument:invoice:1p0#',
      prefix: 'fx',
      properties: [
        { name: 'DocumentFileName', value: 'factur-x.xml', description: 'Name of the embedded XML invoice file' },
        { name: 'DocumentType', value: 'INVOICE', description: 'Type of the hybrid document' },
        { name: 'Version', value: '1.0', description: 'Version of the XML schema used' },
        { name: 'ConformanceLevel', value: 'EN 16931', description: 'Conformance level of the XML data' },
      ],
    },
  ],
};

/** Documents that try what can go wrong on paper. */
export async function tortureSet(): Promise<readonly Torture[]> {
  return [
    {
      name: 'names in four alphabets',
      markup: page(
        `<facts columns="2">${Object.entries(names)
          .map(([script, name]) => `<fact name="${script}">${escaped(name)}</fact>`)
          .join('')}</facts>${Object.values(names)
          .map(
            (name) =>
              `<p weight="bold">${escaped(name)}</p><p face="mono">${escaped(name)}</p><p face="condensed">${escaped(name)} ✓ ✗ ☐ → ≤ Ω ⌀ ⚠</p>`,
          )
          .join('')}`,
        'a4',
      ),
      more: { title: 'Ευάγγελος & <Щербатов>', author: 'Nguyễn "Ánh"', language: 'el' },
    },
    {
      name: 'notes of three pages',
      markup: page(
        `<h2>Notes</h2>${`<p>${'A note that goes on and on, with numbers such as 12.58 V and words. '.repeat(28)}</p>`.repeat(6)}${signatures}`,
      ),
    },
    { name: 'no lines', markup: page(`${lines(0)}<list kind="dash"></list><p></p>${signatures}`) },
    { name: '80 lines', markup: page(`<h2>Lines</h2>${lines(80)}${signatures}`), more: invoiceFile },
    {
      name: 'a row and columns taller than a page',
      markup: page(
        `<table widths="1 3 1" caption="Long"><thead><tr><th scope="col">A</th><th scope="col">B</th></tr></thead><tbody><tr><th scope="row">key</th><td>${'a long cell '.repeat(900)}</td></tr></tbody></table><columns><column><p>${'left '.repeat(1500)}</p></column><column><list kind="number">${'<item>right</item>'.repeat(70)}</list></column></columns>`,
      ),
    },
    {
      name: 'figures',
      markup: page(
        `${figure}<columns widths="3 9"><column>${figure}</column><column><h2>Beside</h2><h3>Below</h3><p>text</p></column></columns>${signatures}`,
        'a4',
      ),
    },
    {
      name: 'long words',
      markup: page(
        `<p>${'W'.repeat(900)}</p><facts columns="4"><fact name="${'VIN'.repeat(30)}"><m>${'5ZWTA3CD3R1004417'.repeat(9)}</m></fact></facts>`,
      ),
    },
    await photographs(),
  ];
}
