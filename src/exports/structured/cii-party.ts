import type { SemanticParty } from './semantic-invoice.ts';
import { branch, leaf, type XmlElement } from './xml-text.ts';

function registration(identifier: string | undefined, scheme: string): XmlElement | null {
  return branch('ram:SpecifiedTaxRegistration', [leaf('ram:ID', identifier, { schemeID: scheme })]);
}

/**
 * A seller or buyer as a trade party of the cross-industry invoice.
 * @param name element name with its prefix
 * @param party the party in the standard's terms
 */
export function ciiParty(name: string, party: SemanticParty): XmlElement | null {
  const { address, contact, endpoint, legal } = party;
  return branch(name, [
    leaf('ram:ID', party.identifier),
    leaf('ram:Name', party.name),
    branch('ram:SpecifiedLegalOrganization', [
      leaf('ram:ID', legal?.identifier, legal?.scheme === undefined ? {} : { schemeID: legal.scheme }),
    ]),
    branch('ram:DefinedTradeContact', [
      leaf('ram:PersonName', contact?.name),
      branch('ram:TelephoneUniversalCommunication', [leaf('ram:CompleteNumber', contact?.phone)]),
      branch('ram:EmailURIUniversalCommunication', [leaf('ram:URIID', contact?.email)]),
    ]),
    branch('ram:PostalTradeAddress', [
      leaf('ram:PostcodeCode', address.postcode),
      leaf('ram:LineOne', address.street),
      leaf('ram:LineTwo', address.additional),
      leaf('ram:LineThree', address.third),
      leaf('ram:CityName', address.city),
      leaf('ram:CountryID', address.country),
      leaf('ram:CountrySubDivisionName', address.region),
    ]),
    branch('ram:URIUniversalCommunication', [
      endpoint === undefined ? null : leaf('ram:URIID', endpoint.identifier, { schemeID: endpoint.scheme }),
    ]),
    registration(party.vat, 'VA'),
    registration(party.registration, 'FC'),
  ]);
}
