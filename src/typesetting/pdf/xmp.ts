/** A schema of another standard that a document's metadata carries, described as ISO 19005-3, 6.6.2.3 asks; all properties are text. */
export type MetadataSchema = {
  readonly schema: string;
  readonly namespace: string;
  readonly prefix: string;
  readonly properties: readonly { readonly name: string; readonly value: string; readonly description: string }[];
};
type Metadata = {
  readonly title: string;
  readonly author: string;
  readonly language: string;
  /** moment, ISO 8601 */
  readonly created: string;
  readonly schemas: readonly MetadataSchema[];
};

const escapes: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };
const escaped = (text: string) => text.replace(/[&<>"]/g, (character) => escapes[character] ?? character);

/**
 * The XMP packet of a document that claims PDF/A-3 (level A) and PDF/UA-1.
 * @param metadata what the document says of itself
 */
export function xmpPacket(metadata: Metadata): string {
  const { title, author, language, created, schemas } = metadata;
  return `<?xpacket begin="\ufeff" id="W5M0MpCehiHzreSzNTczkc9d"?>
<x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
<rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/" xmlns:xmp="http://ns.adobe.com/xap/1.0/" xmlns:pdf="http://ns.adobe.com/pdf/1.3/" xmlns:pdfaid="http://www.aiim.org/pdfa/ns/id/" xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/">
<dc:format>application/pdf</dc:format>
<dc:title><rdf:Alt><rdf:li xml:lang="x-default">${escaped(title)}</rdf:li></rdf:Alt></dc:title>
<dc:creator><rdf:Seq><rdf:li>${escaped(author)}</rdf:li></rdf:Seq></dc:creator>
<dc:language><rdf:Bag><rdf:li>${escaped(language)}</rdf:li></rdf:Bag></dc:language>
<xmp:CreateDate>${created}</xmp:CreateDate>
<xmp:ModifyDate>${created}</xmp:ModifyDate>
<xmp:CreatorTool>keyout</xmp:CreatorTool>
<pdf:Producer>keyout</pdf:Producer>
<pdfaid:part>3</pdfaid:part>
<pdfaid:conformance>A</pdfaid:conformance>
<pdfuaid:part>1</pdfuaid:part>
</rdf:Description>
${described([uaSchema, ...schemas])}
${schemas.map(values).join('\n')}
</rdf:RDF></x:xmpmeta>
<?xpacket end="r"?>`;
}

const uaSchema: MetadataSchema = {
  schema: 'PDF/UA identification schema',
  namespace: 'http://www.aiim.org/pdfua/ns/id/',
  prefix: 'pdfuaid',
  properties: [{ name: 'part', value: '1', description: 'Part of ISO 14289 that the document meets' }],
};

function values(schema: MetadataSchema): string {
  const { prefix } = schema;
  const rows = schema.properties.map(
    (each) => `<${prefix}:${each.name}>${escaped(each.value)}</${prefix}:${each.name}>`,
  );
  return `<rdf:Description rdf:about="" xmlns:${prefix}="${escaped(schema.namespace)}">${rows.join('')}</rdf:Description>`;
}

function described(schemas: readonly MetadataSchema[]): string {
  const items = schemas.map((schema) => {
    const properties = schema.properties.map(
      (each) =>
        `<rdf:li rdf:parseType="Resource"><pdfaProperty:name>${escaped(each.name)}</pdfaProperty:name><pdfaProperty:valueType>${schema === uaSchema ? 'Integer' : 'Text'}</pdfaProperty:valueType><pdfaProperty:category>${schema === uaSchema ? 'internal' : 'external'}</pdfaProperty:category><pdfaProperty:description>${escaped(each.description)}</pdfaProperty:description></rdf:li>`,
    );
    return `<rdf:li rdf:parseType="Resource"><pdfaSchema:schema>${escaped(schema.schema)}</pdfaSchema:schema><pdfaSchema:namespaceURI>${escaped(schema.namespace)}</pdfaSchema:namespaceURI><pdfaSchema:prefix>${schema.prefix}</pdfaSchema:prefix><pdfaSchema:property><rdf:Seq>${properties.join('')}</rdf:Seq></pdfaSchema:property></rdf:li>`;
  });
  return `<rdf:Description rdf:about="" xmlns:pdfaExtension="http://www.aiim.org/pdfa/ns/extension/" xmlns:pdfaSchema="http://www.aiim.org/pdfa/ns/schema#" xmlns:pdfaProperty="http://www.aiim.org/pdfa/ns/property#"><pdfaExtension:schemas><rdf:Bag>${items.join('')}</rdf:Bag></pdfaExtension:schemas></rdf:Description>`;
}
