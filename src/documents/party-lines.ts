import type { InvoiceParty } from '../records/issued-invoice.ts';
import type { Writing } from '../words/writing.ts';

/** Countries that write the postcode after the city (Universal Postal Union, postal addressing systems; from memory). */
const postcodeLast = ['US', 'CA', 'AU', 'NZ', 'GB', 'IE', 'IN', 'ZA', 'SG', 'HK'];

/**
 * A party's address and identifiers, line by line.
 * @param party the party as it stood on the day of issue
 * @param isAbroad whether the other party is in another country, so that the country is named
 * @param writing the document's words
 */
export function partyLines(
  party: InvoiceParty,
  isAbroad: boolean,
  writing: Writing,
): readonly { readonly text: string }[] {
  const { address } = party;
  const { sentences } = writing;
  const words = (...parts: readonly (string | undefined)[]) => parts.filter((part) => part !== undefined).join(' ');
  const after = words(address.region, address.postcode);
  const city = postcodeLast.includes(address.country)
    ? `${address.city}${after === '' ? '' : `, ${after}`}`
    : `${words(address.postcode, address.city)}${address.region === undefined ? '' : `, ${address.region}`}`;
  return [
    ...address.lines,
    city,
    ...(isAbroad ? [writing.country(address.country)] : []),
    ...(party.contact === undefined ? [] : [sentences.attention(party.contact)]),
    ...(party.taxIdentifier === undefined ? [] : [sentences.taxIdentifier(party.taxIdentifier)]),
    ...(party.exemptionCertificate === undefined ? [] : [sentences.exemption(party.exemptionCertificate)]),
  ].map((text) => ({ text }));
}
