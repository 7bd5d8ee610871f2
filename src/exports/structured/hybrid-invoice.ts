import { Problem } from '../../problem.ts';
import type { IssuedInvoice } from '../../records/issued-invoice.ts';
import { ciiXml } from './cii-xml.ts';

const fileName = 'factur-x.xml';

// Source: Factur-X 1.0 (ZUGFeRD 2), Technical Appendix: XMP extension schema, file name and relationship of the embedded file
const schema = {
  schema: 'Factur-X PDFA Extension Schema',
  namespace: 'urn:factur-x:pdfa:CrossIndustryDocument:invoice:1p0#',
  prefix: 'fx',
  properties: [
    { name: 'DocumentFileName', value: fileName, description: 'name of the embedded XML invoice file' },
    { name: 'DocumentType', value: 'INVOICE', description: 'INVOICE' },
    { name: 'Version', value: '1.0', description: 'version of the standard' },
    { name: 'ConformanceLevel', value: 'EN 16931', description: 'conformance level of the embedded file' },
  ],
} as const;

/**
 * What an invoice's PDF carries inside so that a program can read it too: the cross-industry invoice and the metadata that names it.
 * Both lists are empty where the data lack something for a structured file.
 * @param invoice an issued invoice or credit note
 */
export function hybridInvoice(invoice: IssuedInvoice) {
  let xml: string;
  try {
    xml = ciiXml(invoice);
  } catch (error) {
    if (!(error instanceof Problem)) throw error;
    return { attachments: [], metadataSchemas: [] };
  }
  const attachment = {
    name: fileName,
    bytes: new TextEncoder().encode(xml),
    mimeType: 'text/xml',
    description: `${invoice.number} as a cross-industry invoice (EN 16931)`,
    relationship: 'Alternative',
  } as const;
  return { attachments: [attachment], metadataSchemas: [schema] };
}
