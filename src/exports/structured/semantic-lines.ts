import { Problem } from '../../problem.ts';
import { decimalScale, lineAmountMinorUnits, millionths } from '../../quantities/decimal.ts';
import { majorPriceText, majorText, plainDecimal } from '../../quantities/major-units.ts';
import { unitCode } from '../../quantities/unit-code.ts';
import type { InvoiceLine, IssuedInvoice } from '../../records/issued-invoice.ts';
import type { SemanticLine, SemanticTax } from './semantic-invoice.ts';

const negated = (text: string) => plainDecimal(text.startsWith('-') ? text.slice(1) : `-${text}`);

function isExact(line: InvoiceLine, amount: number): boolean {
  const product = millionths(line.quantity) * millionths(line.unitPriceMinorUnits);
  return product === BigInt(amount) * millionths(line.baseQuantity) * decimalScale;
}

// quantity, price and base quantity whose product is the line's amount; the standard takes no negative price (BR-27)
function charged(line: InvoiceLine, digits: number): Pick<SemanticLine, 'quantity' | 'price' | 'baseQuantity'> {
  const amount = line.netMinorUnits + line.discountMinorUnits;
  const quantity = plainDecimal(line.quantity);
  const computed = lineAmountMinorUnits(line.quantity, line.unitPriceMinorUnits, line.baseQuantity);
  const shown = digits > 0 || isExact(line, amount);
  if (computed === amount && shown) {
    const negative = millionths(line.unitPriceMinorUnits) < 0n;
    const base = plainDecimal(line.baseQuantity);
    return {
      quantity: negative ? negated(quantity) : quantity,
      price: majorPriceText(negative ? negated(line.unitPriceMinorUnits) : line.unitPriceMinorUnits, digits),
      ...(base === '1' ? {} : { baseQuantity: base }),
    };
  }
  // the amount for the whole quantity is the only exact price where prices include tax, and where a currency without decimals
  // rounds by more than the hundredth that Peppol allows (PEPPOL-EN16931-R120)
  const whole = millionths(quantity) === 0n ? '1' : quantity.replace('-', '');
  const positive = amount < 0 === quantity.startsWith('-');
  return {
    quantity: positive ? quantity : negated(quantity),
    price: majorText(Math.abs(amount), digits),
    ...(whole === '1' ? {} : { baseQuantity: whole }),
  };
}

/**
 * The lines (BG-25).
 * @param invoice the document
 * @param taxes category and rate by tax code
 * @param digits decimals of the currency
 * @throws Problem when a line has a tax code that the document does not sum
 */
export function semanticLines(
  invoice: IssuedInvoice,
  taxes: ReadonlyMap<string, SemanticTax>,
  digits: number,
): readonly SemanticLine[] {
  const days = new Map(invoice.vehicles.map((vehicle) => [vehicle.job, vehicle]));
  const several = invoice.supplied.from !== invoice.supplied.to;
  return invoice.lines.map((line) => {
    const tax = taxes.get(line.taxCode);
    if (tax === undefined)
      throw new Problem(
        `Line ${line.number} has the tax code "${line.taxCode}", which the document does not sum.`,
        `${invoice.number}, taxes`,
        'Issue the document again with the tax code in the book.',
      );
    const vehicle = line.job === null ? undefined : days.get(line.job);
    const inside =
      several && vehicle !== undefined && vehicle.day >= invoice.supplied.from && vehicle.day <= invoice.supplied.to;
    const credit = line.discountMinorUnits < 0;
    return {
      id: String(line.number),
      ...(line.because === '' ? {} : { note: line.because }),
      ...charged(line, digits),
      unit: unitCode(line.unit),
      net: majorText(line.netMinorUnits, digits),
      ...(inside ? { day: vehicle.day } : {}),
      allowances:
        line.discountMinorUnits === 0
          ? []
          : [
              {
                charge: credit,
                reason: line.discountBecause || (credit ? 'Charge' : 'Discount'),
                amount: majorText(Math.abs(line.discountMinorUnits), digits),
              },
            ],
      name: line.what,
      attributes: [
        ...(line.job === null ? [] : [{ name: 'job', value: line.job }]),
        ...(vehicle === undefined || invoice.vehicles.length < 2 ? [] : [{ name: 'vehicle', value: vehicle.text }]),
      ],
      tax,
    };
  });
}
