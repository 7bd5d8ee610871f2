import { majorText } from '../../quantities/major-units.ts';
import type { IssuedInvoice } from '../../records/issued-invoice.ts';
import { wordsIn } from '../../words/words-in.ts';
import type { SemanticInvoice } from './semantic-invoice.ts';

/**
 * The payment terms as text (BT-20), or nothing.
 * @param invoice the document
 * @param digits decimals of the currency
 */
export function paymentTerms(invoice: IssuedInvoice, digits: number): string | undefined {
  const { corrects, payment, language, currency } = invoice;
  if (corrects !== undefined) return wordsIn(language).payment.against(corrects.number, corrects.issued);
  const { earlyPayment, lateInterest, terms } = payment;
  const early =
    earlyPayment === undefined
      ? undefined
      : wordsIn(language).payment.early(
          earlyPayment.percent,
          earlyPayment.until,
          `${majorText(earlyPayment.amountMinorUnits, digits)} ${currency}`,
        );
  const lines = [early, lateInterest, terms].filter((line) => line !== undefined && line !== '');
  return lines.length === 0 ? undefined : lines.join('\n');
}

/**
 * How to pay (BG-16). Codes of UNTDID 4461: 58 SEPA credit transfer, 30 credit transfer, 97 clearing between partners.
 * @param invoice the document
 */
export function paymentMeans(invoice: IssuedInvoice): SemanticInvoice['payment'] {
  const { iban, bic, accountNumber, accountName, routingNumber, reference } = invoice.payment;
  if (invoice.type === 'credit note') return { code: '97' };
  const compact = iban?.replace(/\s/g, '').toUpperCase();
  const identifier = compact ?? accountNumber;
  if (identifier === undefined) return undefined;
  const provider = bic?.replace(/\s/g, '') ?? (compact === undefined ? routingNumber : undefined);
  return {
    code: compact !== undefined && invoice.currency === 'EUR' ? '58' : '30',
    remittance: reference,
    account: {
      identifier,
      iban: compact !== undefined,
      ...(accountName === undefined ? {} : { name: accountName }),
      ...(provider === undefined ? {} : { provider }),
    },
  };
}

/**
 * The note on the document (BT-22): why it corrects another, what it was done on, the buyer's exemption certificate.
 * @param invoice the document
 */
export function documentNote(invoice: IssuedInvoice): string | undefined {
  const { corrects, payer, vehicles, language } = invoice;
  const lines = [
    ...(corrects === undefined ? [] : [corrects.because]),
    ...vehicles.map((vehicle) =>
      [vehicle.job, vehicle.text, vehicle.customer, vehicle.place, vehicle.purchaseOrder].filter(Boolean).join(', '),
    ),
    ...(payer.exemptionCertificate === undefined
      ? []
      : [`${wordsIn(language).payment.exemption} ${payer.exemptionCertificate}`]),
  ];
  return lines.length === 0 ? undefined : lines.join('\n');
}
