import { currencyDigits } from '../quantities/currency-digits.ts';
import { majorText } from '../quantities/major-units.ts';
import type { IssuedInvoice } from '../records/issued-invoice.ts';
import type { Writing } from '../words/writing.ts';

const grouped = (text: string) => text.replace(/\s/g, '').replace(/(.{4})(?=.)/g, '$1 ');

/** Where and with what reference an invoice is paid; empty on a credit note and where nothing is due. */
export function howToPay(
  invoice: IssuedInvoice,
  { labels, money }: Writing,
): readonly { readonly name: string; readonly text: string }[] {
  const { payment, totals } = invoice;
  if (invoice.type === 'credit note' || totals.dueMinorUnits <= 0) return [];
  const link = payment.link
    ?.replaceAll('{number}', encodeURIComponent(invoice.number))
    .replaceAll('{amount}', majorText(totals.dueMinorUnits, currencyDigits(invoice.currency)));
  const rows: readonly (readonly [string, string | undefined])[] = [
    [labels.amount, money(totals.dueMinorUnits)],
    [labels.payReference, payment.reference],
    [labels.accountName, payment.accountName],
    [labels.bank, payment.bank],
    [labels.account, payment.accountNumber],
    [labels.routingNumber, payment.routingNumber],
    ['IBAN', payment.iban === undefined ? undefined : grouped(payment.iban)],
    ['BIC', payment.bic],
    [labels.payOnline, link],
  ];
  return rows.flatMap(([name, text]) => (text === undefined ? [] : [{ name, text }]));
}
