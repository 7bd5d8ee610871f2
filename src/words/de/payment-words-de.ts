import type { PaymentWords } from '../payment-words.ts';

/** What a structured document says of payment, in German. */
export const paymentWordsDe: PaymentWords = {
  early: (percent, until, amount) => `${percent} % Skonto bei Zahlung bis ${until}: ${amount}`,
  against: (number, issued) => `Verrechnet mit der Rechnung ${number} vom ${issued}`,
  exemption: 'Befreiungsbescheinigung',
};
