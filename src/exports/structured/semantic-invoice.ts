/** A tax category and rate (BT-151 and BT-152, BT-118 and BT-119); category O carries no rate. */
export type SemanticTax = { readonly category: string; readonly rate?: string };

/** A seller or buyer (BG-4, BG-7). */
export type SemanticParty = {
  readonly name: string;
  /** identifier given by the other side or by a register without scheme (BT-29, BT-46) */
  readonly identifier?: string;
  /** register number (BT-30, BT-47) with its ISO 6523 scheme where known */
  readonly legal?: { readonly identifier: string; readonly scheme?: string };
  /** VAT identifier with country prefix (BT-31, BT-48) */
  readonly vat?: string;
  /** other tax registration (BT-32) */
  readonly registration?: string;
  readonly endpoint?: { readonly scheme: string; readonly identifier: string };
  readonly address: {
    readonly street?: string;
    readonly additional?: string;
    readonly third?: string;
    readonly city: string;
    readonly region?: string;
    readonly postcode?: string;
    readonly country: string;
  };
  readonly contact?: { readonly name?: string; readonly phone?: string; readonly email?: string };
};

/** A document or line allowance or charge (BG-20, BG-21, BG-27, BG-28). */
export type SemanticAllowance = {
  readonly charge: boolean;
  readonly reason: string;
  readonly amount: string;
};

/** An invoice line (BG-25); every amount is decimal text in the major unit. */
export type SemanticLine = {
  readonly id: string;
  readonly note?: string;
  readonly quantity: string;
  /** UN/ECE Recommendation 20 */
  readonly unit: string;
  readonly net: string;
  readonly day?: string;
  readonly allowances: readonly SemanticAllowance[];
  readonly name: string;
  readonly attributes: readonly { readonly name: string; readonly value: string }[];
  readonly tax: SemanticTax;
  readonly price: string;
  readonly baseQuantity?: string;
};

/** An invoice or credit note in the terms of EN 16931-1, ready for any syntax: all checks are passed, all amounts are text. */
export type SemanticInvoice = {
  /** both parties' data allow Peppol BIS Billing 3 */
  readonly peppol: boolean;
  readonly credit: boolean;
  readonly number: string;
  readonly issued: string;
  readonly due: string;
  readonly currency: string;
  readonly note?: string;
  readonly buyerReference?: string;
  readonly orderReference?: string;
  readonly period?: { readonly from: string; readonly to: string };
  readonly delivered: string;
  readonly deliverToCountry?: string;
  readonly preceding?: { readonly number: string; readonly issued: string };
  readonly seller: SemanticParty;
  readonly buyer: SemanticParty;
  readonly payment?: {
    /** UNTDID 4461 */
    readonly code: string;
    readonly remittance?: string;
    readonly account?: {
      readonly identifier: string;
      readonly iban: boolean;
      readonly name?: string;
      readonly provider?: string;
    };
  };
  readonly terms?: string;
  readonly allowances: readonly (SemanticAllowance & { readonly tax: SemanticTax })[];
  readonly taxes: readonly {
    readonly tax: SemanticTax;
    readonly base: string;
    readonly amount: string;
    readonly reason?: string;
    readonly reasonCode?: string;
  }[];
  readonly totals: {
    readonly lines: string;
    readonly allowances?: string;
    readonly charges?: string;
    readonly net: string;
    readonly tax: string;
    readonly gross: string;
    readonly prepaid?: string;
    readonly rounding?: string;
    readonly due: string;
  };
  readonly lines: readonly SemanticLine[];
};
