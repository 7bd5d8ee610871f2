import { Decimal } from 'decimal.js';
import { expect } from 'vitest';
import { elementsAt, everyElement, type ReadElement, textAt } from './read-xml.ts';

type Moved = { readonly charge: boolean; readonly amount: string; readonly tax: string };

/** Every figure of a structured file, whatever its syntax. */
export type Figures = {
  readonly lines: readonly {
    readonly quantity: string;
    readonly price: string;
    readonly baseQuantity: string;
    readonly net: string;
    readonly tax: string;
    readonly moved: readonly Moved[];
  }[];
  readonly moved: readonly Moved[];
  readonly groups: readonly { readonly tax: string; readonly base: string; readonly amount: string }[];
  readonly totals: Readonly<Record<string, string>>;
};

/** The figures of a UBL file. */
export function ublFigures(root: ReadElement): Figures {
  const taxOf = (element: ReadElement, path: string) =>
    `${textAt(element, `${path}/cbc:ID`)} ${textAt(element, `${path}/cbc:Percent`)}`.trim();
  const moved = (element: ReadElement) =>
    elementsAt(element, 'cac:AllowanceCharge').map((each) => ({
      charge: textAt(each, 'cbc:ChargeIndicator') === 'true',
      amount: textAt(each, 'cbc:Amount'),
      tax: taxOf(each, 'cac:TaxCategory'),
    }));
  const total = (name: string) => textAt(root, `cac:LegalMonetaryTotal/cbc:${name}`);
  return {
    lines: root.children
      .filter((child) => /^cac:(Invoice|CreditNote)Line$/.test(child.name))
      .map((line) => ({
        quantity: textAt(line, 'cbc:InvoicedQuantity') || textAt(line, 'cbc:CreditedQuantity'),
        price: textAt(line, 'cac:Price/cbc:PriceAmount'),
        baseQuantity: textAt(line, 'cac:Price/cbc:BaseQuantity') || '1',
        net: textAt(line, 'cbc:LineExtensionAmount'),
        tax: taxOf(line, 'cac:Item/cac:ClassifiedTaxCategory'),
        moved: moved(line),
      })),
    moved: moved(root),
    groups: elementsAt(root, 'cac:TaxTotal/cac:TaxSubtotal').map((group) => ({
      tax: taxOf(group, 'cac:TaxCategory'),
      base: textAt(group, 'cbc:TaxableAmount'),
      amount: textAt(group, 'cbc:TaxAmount'),
    })),
    totals: {
      lines: total('LineExtensionAmount'),
      allowances: total('AllowanceTotalAmount'),
      charges: total('ChargeTotalAmount'),
      net: total('TaxExclusiveAmount'),
      tax: textAt(root, 'cac:TaxTotal/cbc:TaxAmount'),
      gross: total('TaxInclusiveAmount'),
      prepaid: total('PrepaidAmount'),
      rounding: total('PayableRoundingAmount'),
      due: total('PayableAmount'),
    },
  };
}

/** The figures of a cross-industry invoice. */
export function ciiFigures(root: ReadElement): Figures {
  const at = (element: ReadElement, path: string) =>
    textAt(
      element,
      path
        .split('/')
        .map((name) => (name.includes(':') ? name : `ram:${name}`))
        .join('/'),
    );
  const taxOf = (element: ReadElement, path: string) =>
    `${at(element, `${path}/CategoryCode`)} ${at(element, `${path}/RateApplicablePercent`)}`.trim();
  const moved = (element: ReadElement) =>
    elementsAt(element, 'ram:SpecifiedTradeAllowanceCharge').map((each) => ({
      charge: at(each, 'ChargeIndicator/udt:Indicator') === 'true',
      amount: at(each, 'ActualAmount'),
      tax: taxOf(each, 'CategoryTradeTax'),
    }));
  const settlement = everyElement(root).find((each) => each.name === 'ram:ApplicableHeaderTradeSettlement') ?? root;
  const total = (name: string) => at(settlement, `SpecifiedTradeSettlementHeaderMonetarySummation/${name}`);
  return {
    lines: elementsAt(root, 'rsm:SupplyChainTradeTransaction/ram:IncludedSupplyChainTradeLineItem').map((line) => ({
      quantity: at(line, 'SpecifiedLineTradeDelivery/BilledQuantity'),
      price: at(line, 'SpecifiedLineTradeAgreement/NetPriceProductTradePrice/ChargeAmount'),
      baseQuantity: at(line, 'SpecifiedLineTradeAgreement/NetPriceProductTradePrice/BasisQuantity') || '1',
      net: at(line, 'SpecifiedLineTradeSettlement/SpecifiedTradeSettlementLineMonetarySummation/LineTotalAmount'),
      tax: taxOf(line, 'SpecifiedLineTradeSettlement/ApplicableTradeTax'),
      moved: elementsAt(line, 'ram:SpecifiedLineTradeSettlement').flatMap(moved),
    })),
    moved: moved(settlement),
    groups: elementsAt(settlement, 'ram:ApplicableTradeTax').map((group) => ({
      tax: `${at(group, 'CategoryCode')} ${at(group, 'RateApplicablePercent')}`.trim(),
      base: at(group, 'BasisAmount'),
      amount: at(group, 'CalculatedAmount'),
    })),
    totals: {
      lines: total('LineTotalAmount'),
      allowances: total('AllowanceTotalAmount'),
      charges: total('ChargeTotalAmount'),
      net: total('TaxBasisTotalAmount'),
      tax: total('TaxTotalAmount'),
      gross: total('GrandTotalAmount'),
      prepaid: total('TotalPrepaidAmount'),
      rounding: total('RoundingAmount'),
      due: total('DuePayableAmount'),
    },
  };
}

const zero = new Decimal(0);
const sumOf = (amounts: readonly (string | Decimal)[]) => amounts.reduce<Decimal>((all, each) => all.plus(each), zero);
const amountsOf = (moved: readonly Moved[], charge: boolean, tax?: string) =>
  sumOf(
    moved
      .filter((each) => each.charge === charge && (tax === undefined || each.tax === tax))
      .map((each) => each.amount),
  );

/** Naive second calculation of every sum of a file from its quantities, prices and rates (EN 16931-1, BR-CO-10 to BR-CO-17). */
export function rederive(figures: Figures, digits: number): void {
  const round = (value: Decimal) => value.toDecimalPlaces(digits, Decimal.ROUND_HALF_UP);
  const { lines, moved, groups, totals } = figures;
  for (const line of lines) {
    const gross = round(new Decimal(line.quantity).times(line.price).div(line.baseQuantity));
    const net = gross.plus(amountsOf(line.moved, true)).minus(amountsOf(line.moved, false));
    expect(line.net).toBe(net.toFixed(digits));
    expect(new Decimal(line.price).isNegative()).toBe(false);
  }
  const used = [...lines, ...moved].map((each) => each.tax);
  expect(groups.map((group) => group.tax).toSorted()).toEqual([...new Set(used)].toSorted());
  for (const group of groups) {
    const nets = sumOf(lines.filter((line) => line.tax === group.tax).map((line) => line.net));
    const base = nets.plus(amountsOf(moved, true, group.tax)).minus(amountsOf(moved, false, group.tax));
    expect(group.base).toBe(base.toFixed(digits));
    expect(group.amount).toBe(round(base.times(group.tax.split(' ')[1] ?? '0').div(100)).toFixed(digits));
  }
  const all = sumOf(lines.map((line) => line.net));
  const net = all.plus(amountsOf(moved, true)).minus(amountsOf(moved, false));
  const gross = net.plus(sumOf(groups.map((group) => group.amount)));
  expect(totals.lines).toBe(all.toFixed(digits));
  const present = (charge: boolean) => moved.some((each) => each.charge === charge);
  expect(totals.allowances).toBe(present(false) ? amountsOf(moved, false).toFixed(digits) : '');
  expect(totals.charges).toBe(present(true) ? amountsOf(moved, true).toFixed(digits) : '');
  expect(totals.net).toBe(net.toFixed(digits));
  expect(totals.tax).toBe(gross.minus(net).toFixed(digits));
  expect(totals.gross).toBe(gross.toFixed(digits));
  const due = gross.minus(totals.prepaid || '0').plus(totals.rounding || '0');
  expect(totals.due).toBe(due.toFixed(digits));
}

/** Every element stands where its type has it, and none is empty. */
export function checkOrder(
  element: ReadElement,
  orders: ReadonlyMap<string, readonly string[]>,
  nameOf: (name: string) => string = (name) => name,
): void {
  if (element.children.length === 0) {
    expect(element.text, element.name).not.toBe('');
    return;
  }
  const order = orders.get(nameOf(element.name)) ?? [];
  const names = element.children.map((child) => nameOf(child.name));
  const places = names.map((name) => order.indexOf(name));
  expect(places, `${element.name}: ${names}`).not.toContain(-1);
  expect(places).toEqual(places.toSorted((one, other) => one - other));
  for (const child of element.children) checkOrder(child, orders, nameOf);
}
