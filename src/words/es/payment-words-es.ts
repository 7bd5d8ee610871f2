import type { PaymentWords } from '../payment-words.ts';

/** What a structured document says of payment, in Spanish. */
export const paymentWordsEs: PaymentWords = {
  early: (percent, until, amount) => `${percent} % de descuento si se paga antes o el ${until}: ${amount}`,
  against: (number, issued) => `Compensado con la factura ${number} del ${issued}`,
  exemption: 'Certificado de exención',
};
