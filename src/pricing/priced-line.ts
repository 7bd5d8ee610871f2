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

/**
 * A line of so many pieces at a price each, without discount.
 * @param kind what kind of line
 * @param what its text
 * @param priceMinorUnits price of one: whole minor units, or decimal text of them
 * @param because how the figure came about
 * @param quantity decimal text
 */
export function oneOf(
  kind: PricedLine['kind'],
  what: string,
  priceMinorUnits: number | string,
  because: string,
  quantity = '1',
): PricedLine {
  return {
    kind,
    what,
    because,
    quantity,
    unit: 'each',
    unitPriceMinorUnits: String(priceMinorUnits),
    baseQuantity: '1',
    discountMinorUnits: 0,
    discountBecause: '',
  };
}
