/** What a structured document says of payment, in one language; figures are given written already. */
export type PaymentWords = {
  readonly early: (percent: string, until: string, amount: string) => string;
  readonly against: (number: string, issued: string) => string;
  readonly exemption: string;
};
