import { readdirSync, readFileSync, rmSync } from 'node:fs';
import path from 'node:path';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { finishedSampleDay } from '../golden/finished-sample-day.ts';
import { conformanceFlaws } from './conformance-flaws.ts';
import { print } from './print.ts';

let folder = '';
let files: readonly string[] = [];
beforeAll(async () => {
  ({ folder } = await finishedSampleDay());
  files = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((each) => each.endsWith('.pdf'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

type Node = {
  readonly role?: string;
  readonly alt?: string;
  readonly children?: readonly Node[];
  readonly type?: string;
  readonly id?: string;
};

// the tree as another reader gives it: indented roles, the text of each marked piece behind them
async function treeOf(bytes: Uint8Array): Promise<string> {
  const loading = getDocument({ data: new Uint8Array(bytes), verbosity: 0 });
  const pdf = await loading.promise;
  const lines: string[] = [];
  for (let number = 1; number <= pdf.numPages; number += 1) {
    const page = await pdf.getPage(number);
    const pieces = new Map<string, string>();
    let open = '';
    for (const item of (await page.getTextContent({ includeMarkedContent: true })).items as readonly {
      type?: string;
      id?: string;
      str?: string;
    }[]) {
      if (item.type?.startsWith('beginMarkedContent')) open = item.id ?? '';
      else if (item.str !== undefined && open !== '') pieces.set(open, (pieces.get(open) ?? '') + item.str);
    }
    const visit = (node: Node, depth: number): void => {
      if (node.type === 'content') lines.push(`${' '.repeat(depth)}"${pieces.get(node.id ?? '') ?? ''}"`);
      else if (node.role !== undefined && node.role !== 'Root')
        lines.push(`${' '.repeat(depth)}${node.role}${node.alt === undefined ? '' : ` (${node.alt})`}`);
      for (const child of node.children ?? []) visit(child, depth + 1);
    };
    const tree = (await page.getStructTree()) as Node | null;
    if (tree !== null) visit(tree, -1);
  }
  const marked = (await pdf.getMarkInfo()) as { readonly Marked?: boolean } | null;
  lines.push(`marked: ${marked?.Marked}`);
  await loading.destroy();
  return lines.join('\n');
}

describe('every document of the sample day', () => {
  test('has no flaw of PDF/UA-1 and PDF/A-3', async () => {
    expect(files.filter((each) => each.includes('handover'))).toHaveLength(4);
    expect(files.filter((each) => each.includes('invoice'))).toHaveLength(4);
    for (const file of files)
      expect([file, await conformanceFlaws(readFileSync(path.join(folder, file)))]).toEqual([file, []]);
  });

  test('has heads, tables with heads and text alternatives for another reader', async () => {
    for (const file of files) {
      const tree = await treeOf(readFileSync(path.join(folder, file)));
      expect(tree).toMatch(/^Document\n H1\n {2}"/);
      // the sheet of a wasted visit has neither table nor figure
      const worked = !tree.includes('"wasted visit"');
      const roles = ['H2', 'LI', 'Lbl', 'LBody', ...(worked ? ['Table', 'THead', 'TH', 'TD'] : [])];
      for (const role of roles) expect(tree).toMatch(new RegExp(`^ +${role}$`, 'm'));
      if (worked && file.includes('handover')) expect(tree).toMatch(/^ +Figure \(.{20,}\)$/m);
      expect(tree).toContain('marked: true');
    }
  });
});

test('a whole small document as another reader follows it', async () => {
  const { pdf } = await print(`<document title="t"><footer><p>never read</p></footer><h1>Sheet</h1>
<facts><fact name="Plate">VLT 4417</fact></facts><list kind="number"><item>first</item></list>
<table widths="1 1" caption="Volts"><thead><tr><th scope="col">Wire</th><th scope="col">Volts</th></tr></thead><tbody><tr><th scope="row">P1</th><td></td></tr><tr><td span="2">both</td></tr></tbody></table>
<rule/><figure alt="A line" width="20" height="5"><line x1="0" y1="2" x2="20" y2="2"/></figure>
<keep><h2>Signatures</h2><p>Read <b>all</b>.</p><signature-field name="a" label="Customer"/></keep></document>`);
  expect(await treeOf(pdf)).toMatchInlineSnapshot(`
    "Document
     H1
      "Sheet"
     L
      LI
       Lbl
        "Plate"
       LBody
        "VLT 4417"
     L
      LI
       Lbl
        "1."
       LBody
        " first"
     Table
      THead
       TR
        TH
         "Wire"
        TH
         " Volts"
      TBody
       TR
        TH
         "P1"
       TR
        TD
         "both"
     Figure (A line)
      ""
     H2
      "Signatures"
     P
      "Read all."
     P
      "Customer"
     Form (Customer)
    marked: true"
  `);
});
