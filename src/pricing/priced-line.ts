import type { InvoiceLine } from '../records/issued-invoice.ts';

/** One line as priced, before tax and before it stands on a document. */
export type PricedLine = Pick<
  InvoiceLine,
  | 'kind'
  | 'what'
  | 'because'
  | 'quantity'
  | 'unit'
  | 'unitPriceMinorUnits'
  | 'baseQuantity'
  | 'discountMinorUnits'
  | 'discountBecause'
>;
