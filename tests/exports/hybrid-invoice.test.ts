import { expect, test } from 'vitest';
import { ciiXml } from '../../src/exports/structured/cii-xml.ts';
import { hybridInvoice } from '../../src/exports/structured/hybrid-invoice.ts';
import { sampleDocument } from './sample-documents.ts';

test('an invoice carries its structured file under the name that the metadata give', () => {
  const document = sampleDocument({});
  const { attachments, metadataSchemas } = hybridInvoice(document);
  expect(attachments).toHaveLength(1);
  expect(attachments[0]).toMatchObject({
    name: 'factur-x.xml',
    mimeType: 'text/xml',
    relationship: 'Alternative',
  });
  expect(new TextDecoder().decode(attachments[0]?.bytes)).toBe(ciiXml(document));
  const named = Object.fromEntries(
    (metadataSchemas[0]?.properties ?? []).map((each): [string, string] => [each.name, each.value]),
  );
  expect(named).toEqual({
    DocumentFileName: 'factur-x.xml',
    DocumentType: 'INVOICE',
    Version: '1.0',
    ConformanceLevel: 'EN 16931',
  });
});

test('without data for a structured file the PDF carries none and does not claim to', () => {
  expect(hybridInvoice(sampleDocument({ with: { currency: 'KWD' } }))).toEqual({
    attachments: [],
    metadataSchemas: [],
  });
});
