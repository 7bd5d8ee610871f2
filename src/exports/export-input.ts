import type { Payment } from '../pricing/aged-balances.ts';
import { paymentCurrencies } from '../pricing/aged-balances.ts';
import type { CalendarDate } from '../quantities/calendar-date.ts';
import { currencyDigits } from '../quantities/currency-digits.ts';
import { majorText } from '../quantities/major-units.ts';
import type { Book } from '../records/book.ts';
import type { IssuedInvoice } from '../records/issued-invoice.ts';
import type { LedgerEntry } from '../records/ledger-entry.ts';
import type { Trip } from '../records/trip.ts';

/** Everything a period's files are made from. */
export type ExportInput = {
  /** first and last day, inclusive */
  readonly from: CalendarDate;
  readonly to: CalendarDate;
  /** every document ever issued: balances need those before the period */
  readonly documents: readonly IssuedInvoice[];
  /** the whole ledger, in its order */
  readonly entries: readonly LedgerEntry[];
  /** trips of the period */
  readonly trips: readonly Trip[];
  /** structured files as they were issued, by document number; others are made anew */
  readonly structured: ReadonlyMap<string, string>;
  readonly accounts: Book['accounts'];
  /** of the book, for what no document names */
  readonly currency: string;
};

/** A ledger entry that moves money. */
export type MoneyEntry = Extract<LedgerEntry, { event: 'issued' | 'credited' | 'paid' }>;

/** Whether a day lies in the period. */
export function inPeriod(input: ExportInput, day: CalendarDate): boolean {
  return day >= input.from && day <= input.to;
}

/** Documents issued in the period, by day, then by number. */
export function periodDocuments(input: ExportInput): readonly IssuedInvoice[] {
  return input.documents
    .filter((each) => inPeriod(input, each.issued))
    .toSorted((one, other) => (`${one.issued} ${one.number}` < `${other.issued} ${other.number}` ? -1 : 1));
}

/** Every payment of the ledger, in its order. */
export function allPayments(input: ExportInput): readonly Payment[] {
  return input.entries.filter((entry) => entry.event === 'paid');
}

/** Payments of the period, by day, then in the ledger's order. */
export function periodPayments(input: ExportInput): readonly Payment[] {
  return allPayments(input)
    .filter((each) => inPeriod(input, each.day))
    .toSorted((one, other) => (one.day === other.day ? one.sequence - other.sequence : one.day < other.day ? -1 : 1));
}

/** Tells the currency a payment is booked in. */
export function currencyOfPayments(input: ExportInput): (payment: Payment) => string {
  const currencyOf = paymentCurrencies(input.documents);
  return (payment) => currencyOf(payment) ?? input.currency;
}

/** An amount as a cell; credit notes count with a minus sign so that columns sum. */
export function moneyCell(minorUnits: number, currency: string): string {
  return majorText(minorUnits, currencyDigits(currency));
}

/** -1 for a credit note, 1 for an invoice. */
export function signOf(document: IssuedInvoice): 1 | -1 {
  return document.type === 'credit note' ? -1 : 1;
}

/** A number with its sign turned for credit notes, never minus zero. */
export function signed(document: IssuedInvoice, minorUnits: number): number {
  return minorUnits === 0 ? 0 : signOf(document) * minorUnits;
}
