import type { PaymentWords } from '../payment-words.ts';

/** What a structured document says of payment, in English. */
export const paymentWordsEn: PaymentWords = {
  early: (percent, until, amount) => `${percent} % off if paid by ${until}: ${amount}`,
  against: (number, issued) => `Set against invoice ${number} of ${issued}`,
  exemption: 'Exemption certificate',
};
