import type { SemanticParty } from './semantic-invoice.ts';
import { branch, leaf, type XmlElement } from './xml-text.ts';

function taxScheme(identifier: string | undefined, scheme: string): XmlElement | null {
  return identifier === undefined
    ? null
    : branch('cac:PartyTaxScheme', [
        leaf('cbc:CompanyID', identifier),
        branch('cac:TaxScheme', [leaf('cbc:ID', scheme)]),
      ]);
}

/**
 * A seller or buyer as a UBL party.
 * @param party the party in the standard's terms
 */
export function ublParty(party: SemanticParty): XmlElement | null {
  const { address, contact, endpoint, legal } = party;
  return branch('cac:Party', [
    endpoint === undefined ? null : leaf('cbc:EndpointID', endpoint.identifier, { schemeID: endpoint.scheme }),
    branch('cac:PartyIdentification', [leaf('cbc:ID', party.identifier)]),
    branch('cac:PostalAddress', [
      leaf('cbc:StreetName', address.street),
      leaf('cbc:AdditionalStreetName', address.additional),
      leaf('cbc:CityName', address.city),
      leaf('cbc:PostalZone', address.postcode),
      leaf('cbc:CountrySubentity', address.region),
      branch('cac:AddressLine', [leaf('cbc:Line', address.third)]),
      branch('cac:Country', [leaf('cbc:IdentificationCode', address.country)]),
    ]),
    taxScheme(party.vat, 'VAT'),
    taxScheme(party.registration, 'TAX'),
    branch('cac:PartyLegalEntity', [
      leaf('cbc:RegistrationName', party.name),
      leaf('cbc:CompanyID', legal?.identifier, legal?.scheme === undefined ? {} : { schemeID: legal.scheme }),
    ]),
    branch('cac:Contact', [
      leaf('cbc:Name', contact?.name),
      leaf('cbc:Telephone', contact?.phone),
      leaf('cbc:ElectronicMail', contact?.email),
    ]),
  ]);
}
