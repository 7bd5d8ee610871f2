import { Problem } from '../../problem.ts';
import type { InvoiceParty, IssuedInvoice } from '../../records/issued-invoice.ts';
import { addressSchemes, countryCodes } from './code-lists.ts';
import { legalIdentifier } from './legal-identifier.ts';
import type { SemanticParty } from './semantic-invoice.ts';

type Whose = {
  readonly file: string;
  /** field names before the party's own: "business." in book.json */
  readonly prefix: string;
};

function given<Key extends string, Value>(key: Key, value: Value | undefined): { [K in Key]?: Value } {
  return value === undefined ? {} : ({ [key]: value } as { [K in Key]?: Value });
}

/**
 * A VAT identifier as the standard writes it, or null when it does not begin with a country (BR-CO-09).
 * @param identifier as the book has it, blanks allowed
 */
function vatIdentifier(identifier: string): string | null {
  const compact = identifier.replace(/\s/g, '');
  const prefix = compact.slice(0, 2).toUpperCase();
  if (!countryCodes.has(prefix) && prefix !== 'EL') return null;
  return /^[A-Z]{2}.+/.test(`${prefix}${compact.slice(2)}`) ? `${prefix}${compact.slice(2)}` : null;
}

// where VAT identifiers begin with their country: the EU's member states, Northern Ireland, and neighbours that write theirs so
const prefixed: ReadonlySet<string> = new Set(
  'AT BE BG CH CY CZ DE DK EE ES FI FR GB GR HR HU IE IT LI LT LU LV MT NL NO PL PT RO SE SI SK XI'.split(' '),
);

/** Whether a tax identifier without country must be corrected; elsewhere it is a registration of its own kind (BT-32). */
function lacksCountry(party: InvoiceParty, invoice: IssuedInvoice): boolean {
  const { taxIdentifier, address } = party;
  const valueAdded = invoice.regime === 'VAT' || invoice.regime === 'GST';
  return (
    taxIdentifier !== undefined && vatIdentifier(taxIdentifier) === null && valueAdded && prefixed.has(address.country)
  );
}

function postalAddress(party: InvoiceParty, whose: Whose): SemanticParty['address'] {
  const { address } = party;
  if (!countryCodes.has(address.country))
    throw new Problem(
      `"${address.country}" is not a country code of ISO 3166-1.`,
      `${whose.file}, ${whose.prefix}address.country`,
      'Write the two-letter code of the country, such as "DE" or "GB".',
    );
  return {
    ...given('street', address.lines[0]),
    ...given('additional', address.lines[1]),
    ...given('third', address.lines.slice(2).join(', ') || undefined),
    city: address.city,
    ...given('region', address.region),
    ...given('postcode', address.postcode),
    country: address.country,
  };
}

function common(party: InvoiceParty, whose: Whose) {
  const { electronicAddress: endpoint, companyIdentifier } = party;
  if (endpoint !== undefined && !addressSchemes.has(endpoint.scheme))
    throw new Problem(
      `"${endpoint.scheme}" is not a scheme of the EAS list of electronic addresses.`,
      `${whose.file}, ${whose.prefix}electronicAddress.scheme`,
      'Use a code of that list, such as "0088" for a GLN or "9930" for a German VAT number.',
    );
  return {
    name: party.name,
    address: postalAddress(party, whose),
    ...given('endpoint', endpoint),
    ...given(
      'legal',
      companyIdentifier === undefined ? undefined : legalIdentifier(companyIdentifier, party.address.country),
    ),
  };
}

/**
 * The seller (BG-4): its VAT identifier, tax registration and whatever identifies it.
 * @param invoice the document
 * @param outOfScope every line has category O: no VAT identifier may stand on the invoice (BR-O-02)
 * @throws Problem when a tax category needs an identifier that the book lacks
 */
export function semanticSeller(invoice: IssuedInvoice, outOfScope: boolean): SemanticParty {
  const whose = { file: 'book.json', prefix: 'business.' };
  const { seller } = invoice;
  const identifier = seller.taxIdentifier;
  const vat = identifier === undefined ? null : vatIdentifier(identifier);
  if (lacksCountry(seller, invoice) && !outOfScope)
    throw new Problem(
      `The tax identifier "${identifier}" does not begin with a country code.`,
      'book.json, business.taxIdentifier',
      'Write it with its country in front, such as "DE123456789".',
    );
  const registration = seller.taxRegistration ?? (vat === null ? identifier : undefined);
  const needsVat = invoice.taxes.some((group) => group.category === 'K' || group.category === 'G');
  if (!outOfScope && vat === null && (registration === undefined || needsVat))
    throw new Problem(
      'The seller has no tax identifier, and the tax categories used need one.',
      `book.json, business.taxIdentifier${needsVat ? '' : ' or business.taxRegistration'}`,
      'Write the VAT identifier, or the other tax registration of the business.',
    );
  const shared = common(seller, whose);
  const hasOther = (vat !== null && !outOfScope) || shared.legal !== undefined;
  const fallback = hasOther ? undefined : (registration ?? seller.taxIdentifier);
  if (!hasOther && fallback === undefined)
    throw new Problem(
      'Nothing identifies the seller but its name (BR-CO-26).',
      'book.json, business.companyIdentifier',
      'Write the number under which the business is registered, or its tax registration.',
    );
  return {
    ...shared,
    ...given('identifier', fallback),
    ...given('vat', outOfScope || vat === null ? undefined : vat),
    ...given('registration', registration),
    contact: {
      name: seller.contact ?? seller.name,
      ...given('phone', seller.phone),
      ...given('email', seller.email),
    },
  };
}

/**
 * The buyer (BG-7).
 * @param invoice the document
 * @param outOfScope every line has category O: no VAT identifier may stand on the invoice (BR-O-02)
 * @throws Problem when reverse charge or intra-community supply lacks the buyer's identifier
 */
export function semanticBuyer(invoice: IssuedInvoice, outOfScope: boolean): SemanticParty {
  const file = `payers/${invoice.payerId}.json`;
  const { payer } = invoice;
  const identifier = payer.taxIdentifier;
  const vat = identifier === undefined ? null : vatIdentifier(identifier);
  if (lacksCountry(payer, invoice) && !outOfScope)
    throw new Problem(
      `The tax identifier "${identifier}" does not begin with a country code.`,
      `${file}, taxIdentifier`,
      'Write it with its country in front, such as "ATU12345678".',
    );
  // a local tax number of a buyer elsewhere is the one by which its register knows it (BT-47)
  const known =
    vat === null ? { ...payer, ...given('companyIdentifier', payer.companyIdentifier ?? identifier) } : payer;
  const categories = new Set(invoice.taxes.map((group) => group.category));
  if (
    (categories.has('AE') && vat === null && known.companyIdentifier === undefined) ||
    (categories.has('K') && vat === null)
  )
    throw new Problem(
      `${categories.has('AE') ? 'Reverse charge' : 'Intra-community supply'} needs the buyer's VAT identifier.`,
      `${file}, taxIdentifier`,
      'Write it with its country in front, such as "ATU12345678".',
    );
  const contact = { ...given('name', payer.contact), ...given('phone', payer.phone), ...given('email', payer.email) };
  return {
    ...common(known, { file, prefix: '' }),
    identifier: payer.id ?? invoice.payerId,
    ...given('vat', outOfScope || vat === null ? undefined : vat),
    ...(Object.keys(contact).length === 0 ? {} : { contact }),
  };
}
