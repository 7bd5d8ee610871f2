import { addressSchemesOutsidePeppol } from './code-lists.ts';
import { fitsScheme } from './fits-scheme.ts';
import type { SemanticInvoice, SemanticParty } from './semantic-invoice.ts';

function reachable(party: SemanticParty): boolean {
  const { endpoint } = party;
  if (endpoint === undefined || addressSchemesOutsidePeppol.has(endpoint.scheme)) return false;
  return fitsScheme(endpoint.scheme, endpoint.identifier);
}

// what each country's own rules of Peppol BIS Billing 3 ask beyond the common ones; Greece and Iceland need data no book holds
const national: Readonly<Record<string, (invoice: SemanticInvoice, domestic: boolean) => boolean>> = {
  DE: ({ seller, buyer, buyerReference, payment, terms }, domestic) =>
    !domestic ||
    (buyerReference !== undefined &&
      payment !== undefined &&
      seller.address.postcode !== undefined &&
      buyer.address.postcode !== undefined &&
      seller.contact?.phone !== undefined &&
      seller.contact.email !== undefined &&
      !(terms ?? '').split('\n').some((line) => line.trim().startsWith('#'))),
  DK: ({ seller, buyer, payment }, domestic) =>
    seller.legal?.scheme === '0184' &&
    (!domestic || buyer.legal === undefined || buyer.legal.scheme === '0184') &&
    seller.identifier === undefined &&
    (payment === undefined || ['58', '97'].includes(payment.code)),
  GR: () => false,
  IS: () => false,
  IT: ({ seller }) =>
    seller.address.postcode !== undefined &&
    (seller.registration === undefined || /^[A-Z0-9]{11,16}$/.test(seller.registration)),
  NL: ({ seller, buyer, credit, payment, totals }, domestic) => {
    const registered = (party: SemanticParty) => ['0106', '0190'].includes(party.legal?.scheme ?? '');
    const addressed = (party: SemanticParty) => party.address.postcode !== undefined;
    const asksForMoney = !credit && !totals.due.startsWith('-');
    return (
      registered(seller) &&
      addressed(seller) &&
      (payment !== undefined || !asksForMoney) &&
      (!domestic || (registered(buyer) && addressed(buyer) && payment?.code !== '97'))
    );
  },
  NO: ({ seller }) =>
    seller.vat === undefined || (/^NO\d{9}MVA$/.test(seller.vat) && fitsScheme('0192', seller.vat.slice(2, 11))),
  SE: ({ seller, taxes }) =>
    (seller.vat === undefined || /^SE\d{12}$/.test(seller.vat)) &&
    (seller.legal === undefined || seller.legal.scheme === '0007') &&
    (seller.registration === undefined || seller.registration.toUpperCase() === 'GODKÄND FÖR F-SKATT') &&
    taxes.every(({ tax }) => tax.category !== 'S' || ['6', '12', '25'].includes(tax.rate ?? '')),
};

/**
 * Whether both parties' data allow the document to be sent as Peppol BIS Billing 3 (rules PEPPOL-EN16931-R003, R010, R020 and national ones).
 * @param invoice the document in the standard's terms
 */
export function peppolAllows(invoice: SemanticInvoice): boolean {
  const { seller, buyer, buyerReference, orderReference } = invoice;
  if (buyerReference === undefined && orderReference === undefined) return false;
  if (!reachable(seller) || !reachable(buyer)) return false;
  const domestic = seller.address.country === buyer.address.country;
  return national[seller.address.country]?.(invoice, domestic) ?? true;
}
