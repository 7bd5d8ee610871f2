import { decimalScale, decimalText, lineAmountMinorUnits, millionths } from './decimal.ts';
import { divideRounded } from './divide-rounded.ts';

/**
 * The unit price, in at most six decimals of the minor unit, at which a quantity costs exactly an amount, or null when
 * no such price exists (an amount of the other sign, or a quantity beyond half a million base quantities).
 * @param amountMinorUnits the amount wanted, whole minor units
 * @param quantity decimal text
 * @param baseQuantity decimal text, the quantity the price is for
 */
export function priceForAmount(amountMinorUnits: number, quantity: string, baseQuantity = '1'): string | null {
  const count = millionths(quantity);
  if (count === 0n) return null;
  const price = divideRounded(BigInt(amountMinorUnits) * decimalScale * millionths(baseQuantity), count);
  const text = decimalText(price);
  return price >= 0n && lineAmountMinorUnits(quantity, text, baseQuantity) === amountMinorUnits ? text : null;
}
