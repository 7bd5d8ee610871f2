import { type CalendarDate, daysBetween } from '../quantities/calendar-date.ts';
import type { IssuedInvoice } from '../records/issued-invoice.ts';
import type { LedgerEntry } from '../records/ledger-entry.ts';

/** A payment as the ledger holds it. */
export type Payment = Extract<LedgerEntry, { event: 'paid' }>;

/** How long a balance is overdue, in days after the due date. */
export const ageBuckets = ['current', '1-30', '31-60', '61-90', 'over 90'] as const;
export type AgeBucket = (typeof ageBuckets)[number];

/** An invoice with what was paid and credited on it up to a day. */
export type OpenDocument = {
  readonly number: string;
  readonly payerId: string;
  readonly payerName: string;
  readonly currency: string;
  readonly issued: CalendarDate;
  readonly due: CalendarDate;
  readonly grossMinorUnits: number;
  /** deposits named on the invoice and payments allocated to it */
  readonly paidMinorUnits: number;
  readonly creditedMinorUnits: number;
  /** negative: more was paid and credited than charged */
  readonly balanceMinorUnits: number;
  /** zero or less: not yet overdue */
  readonly daysOverdue: number;
  readonly bucket: AgeBucket;
};

/** What one payer owes, by age, with what stands to its credit apart; total = buckets less credit. */
export type PayerBalance = {
  readonly payerId: string;
  readonly payerName: string;
  readonly currency: string;
  readonly buckets: Readonly<Record<AgeBucket, number>>;
  /** payments and credits not used up by an invoice, as a positive amount */
  readonly creditMinorUnits: number;
  readonly totalMinorUnits: number;
  /** every invoice whose balance is not zero, oldest due date first */
  readonly open: readonly OpenDocument[];
};

function bucketOf(daysOverdue: number): AgeBucket {
  if (daysOverdue <= 0) return 'current';
  if (daysOverdue <= 30) return '1-30';
  if (daysOverdue <= 60) return '31-60';
  return daysOverdue <= 90 ? '61-90' : 'over 90';
}

function addTo(sums: Map<string, number>, key: string, amount: number): void {
  sums.set(key, (sums.get(key) ?? 0) + amount);
}

/**
 * Every invoice issued up to a day with its balance on that day (credit notes and payments after it do not count).
 * @param documents invoices and credit notes, any order
 * @param payments payments of the ledger, any order
 * @param asOf the day, inclusive
 */
export function openDocuments(
  documents: readonly IssuedInvoice[],
  payments: readonly Payment[],
  asOf: CalendarDate,
): readonly OpenDocument[] {
  const credited = new Map<string, number>();
  const paid = new Map<string, number>();
  for (const each of documents)
    if (each.corrects !== undefined && each.issued <= asOf)
      addTo(credited, each.corrects.number, each.totals.dueMinorUnits);
  for (const payment of payments.filter((each) => each.day <= asOf))
    for (const part of payment.allocations) addTo(paid, part.invoice, part.amountMinorUnits);
  return documents
    .filter((each) => each.type === 'invoice' && each.issued <= asOf)
    .map((each) => {
      const paidMinorUnits = each.totals.paidMinorUnits + (paid.get(each.number) ?? 0);
      const creditedMinorUnits = credited.get(each.number) ?? 0;
      const daysOverdue = daysBetween(each.due, asOf);
      return {
        number: each.number,
        payerId: each.payerId,
        payerName: each.payer.name,
        currency: each.currency,
        issued: each.issued,
        due: each.due,
        grossMinorUnits: each.totals.grossMinorUnits,
        paidMinorUnits,
        creditedMinorUnits,
        // due and paid together are what was owed at issue, rounding (BT-114) included
        balanceMinorUnits: each.totals.dueMinorUnits + each.totals.paidMinorUnits - paidMinorUnits - creditedMinorUnits,
        daysOverdue,
        bucket: bucketOf(daysOverdue),
      };
    })
    .sort((one, other) => (`${one.due} ${one.number}` < `${other.due} ${other.number}` ? -1 : 1));
}

/**
 * Who owes what, by age from the due date, as of any day; one entry a payer and currency, in the order of payer ids.
 * @param documents invoices and credit notes, any order
 * @param payments payments of the ledger, any order
 * @param asOf the day, inclusive
 */
export function agedBalances(
  documents: readonly IssuedInvoice[],
  payments: readonly Payment[],
  asOf: CalendarDate,
): readonly PayerBalance[] {
  const all = openDocuments(documents, payments, asOf);
  const unused = unusedCredits(documents, payments, asOf);
  const keys = new Set([...all.map((each) => `${each.payerId} ${each.currency}`), ...unused.keys()]);
  const names = new Map(documents.map((each) => [each.payerId, each.payer.name]));
  return [...keys].sort().map((key) => {
    const [payerId = '', currency = ''] = key.split(' ');
    const own = all.filter((each) => each.payerId === payerId && each.currency === currency);
    const buckets = { current: 0, '1-30': 0, '31-60': 0, '61-90': 0, 'over 90': 0 };
    let creditMinorUnits = unused.get(key) ?? 0;
    for (const each of own) {
      if (each.balanceMinorUnits < 0) creditMinorUnits -= each.balanceMinorUnits;
      else buckets[each.bucket] += each.balanceMinorUnits;
    }
    const owed = ageBuckets.reduce((sum, bucket) => sum + buckets[bucket], 0);
    return {
      payerId,
      payerName: names.get(payerId) ?? payerId,
      currency,
      buckets,
      creditMinorUnits,
      totalMinorUnits: owed - creditMinorUnits,
      open: own.filter((each) => each.balanceMinorUnits !== 0),
    };
  });
}

/**
 * Tells the currency of a payment: as the ledger says, else that of an invoice it was allocated to, else of the payer's last document.
 * @param documents invoices and credit notes
 */
export function paymentCurrencies(documents: readonly IssuedInvoice[]): (payment: Payment) => string | undefined {
  const byNumber = new Map(documents.map((each) => [each.number, each.currency]));
  const byPayer = new Map(documents.map((each) => [each.payerId, each.currency]));
  return (payment) =>
    payment.currency ??
    payment.allocations.map((part) => byNumber.get(part.invoice)).find((currency) => currency !== undefined) ??
    byPayer.get(payment.payer) ??
    documents.at(-1)?.currency;
}

// what was paid beyond the invoices it was allocated to, or for invoices that are issued only later
function unusedCredits(
  documents: readonly IssuedInvoice[],
  payments: readonly Payment[],
  asOf: CalendarDate,
): Map<string, number> {
  const unused = new Map<string, number>();
  const later = new Set(documents.flatMap((each) => (each.issued > asOf ? [each.number] : [])));
  for (const each of documents)
    if (each.corrects !== undefined && each.issued <= asOf && later.has(each.corrects.number))
      addTo(unused, `${each.payerId} ${each.currency}`, each.totals.dueMinorUnits);
  const currencyOf = paymentCurrencies(documents);
  for (const payment of payments.filter((each) => each.day <= asOf)) {
    const rest = payment.allocations
      .filter((part) => !later.has(part.invoice))
      .reduce((sum, part) => sum - part.amountMinorUnits, payment.amountMinorUnits);
    if (rest === 0) continue;
    addTo(unused, `${payment.payer} ${currencyOf(payment) ?? ''}`, rest);
  }
  return unused;
}
