import { agedBalances, type OpenDocument, openDocuments } from '../pricing/aged-balances.ts';
import { allocatePayment, drawOnCredit } from '../pricing/allocate-payment.ts';
import { Problem } from '../problem.ts';
import { writeMoney } from '../quantities/write-money.ts';
import { readIssued } from '../storage/issued.ts';
import type { OpenBook } from '../storage/open-book.ts';
import { type NewPayment, type RecordedPayment, readPayments } from '../storage/record-payment.ts';

/** A payment as it was asked for. */
export type PaymentRequest = {
  readonly kind: 'payment' | 'use of credit' | 'refund';
  readonly payer: string;
  readonly currency: string;
  /** null: all that is open of the invoices, as far as the credit goes where credit is used */
  readonly amountMinorUnits: number | null;
  /** none: every open invoice of the payer */
  readonly named: readonly { readonly invoice: string; readonly amountMinorUnits: number | null }[];
  readonly day: string;
  readonly method: string;
  readonly reference?: string;
  readonly because?: string;
};

const lastDay = '9999-12-31';
const where = 'keyout paid';

/** The balances of a payer's invoices in one currency, whatever their days. */
export function balancesOf(book: OpenBook, payer: string, currency: string) {
  const documents = readIssued(book).map((each) => each.invoice);
  const payments = readPayments(book);
  const own = (each: { readonly payerId: string; readonly currency: string }) =>
    each.payerId === payer && each.currency === currency;
  return {
    documents: openDocuments(documents, payments, lastDay).filter(own),
    creditMinorUnits: agedBalances(documents, payments, lastDay).find(own)?.creditMinorUnits ?? 0,
  };
}

function refuseTooMuch(request: PaymentRequest, chosen: readonly OpenDocument[], amount: number, locale: string): void {
  const money = (minorUnits: number) => writeMoney(minorUnits, request.currency, locale);
  for (const { invoice, amountMinorUnits } of request.named) {
    const balance = Math.max(0, chosen.find((each) => each.number === invoice)?.balanceMinorUnits ?? 0);
    if (amountMinorUnits !== null && amountMinorUnits > balance)
      throw new Problem(
        `${invoice} has ${money(balance)} open, less than the ${money(amountMinorUnits)} named for it.`,
        where,
        'Name no more than is open; what is paid beyond that is kept as the payer’s credit by itself.',
        2,
      );
  }
  const fixed = request.named.reduce((sum, each) => sum + (each.amountMinorUnits ?? 0), 0);
  if (fixed > amount)
    throw new Problem(
      `The amounts named for the invoices come to ${money(fixed)}, the payment is ${money(amount)}.`,
      where,
      'Make them agree.',
      2,
    );
}

function refuseMoreThanCredit(request: PaymentRequest, amount: number, credit: number, locale: string): void {
  if (amount > 0 && amount <= credit) return;
  const money = (minorUnits: number) => writeMoney(minorUnits, request.currency, locale);
  throw new Problem(
    credit === 0
      ? `${request.payer} has no credit.`
      : `${request.payer} has ${money(credit)} of credit, not ${money(amount)}.`,
    where,
    '`keyout owed` shows what stands to a payer’s credit.',
    1,
  );
}

/**
 * The ledger's entry for a payment: which invoices it pays and what is kept as the payer's credit (amount less allocations).
 * @param book the open book
 * @param request what was asked for
 * @throws Problem when more is named for an invoice than is open, or more credit is used than there is
 */
export function composePayment(book: OpenBook, request: PaymentRequest): NewPayment {
  const { payer, currency, day, method, reference, because, named } = request;
  const { documents, creditMinorUnits } = balancesOf(book, payer, currency);
  const chosen = documents.filter((each) =>
    named.length === 0 ? each.balanceMinorUnits > 0 : named.some((one) => one.invoice === each.number),
  );
  const overpaid = documents.filter((each) => each.balanceMinorUnits < 0);
  const open = chosen.reduce((sum, each) => sum + Math.max(0, each.balanceMinorUnits), 0);
  const shared = {
    day,
    payer,
    currency,
    method,
    ...(reference === undefined ? {} : { reference }),
    ...(because === undefined ? {} : { because }),
  };
  if (request.kind === 'refund') {
    const amount = request.amountMinorUnits ?? creditMinorUnits;
    refuseMoreThanCredit(request, amount, creditMinorUnits, book.book.locale);
    return { ...shared, amountMinorUnits: -amount, allocations: [...drawOnCredit(amount, overpaid)] };
  }
  const fallback = request.kind === 'payment' ? open : Math.min(open, creditMinorUnits);
  const amount = request.amountMinorUnits ?? fallback;
  refuseTooMuch(request, chosen, amount, book.book.locale);
  const { allocations, restMinorUnits } = allocatePayment(amount, named, chosen);
  if (request.kind === 'payment') return { ...shared, amountMinorUnits: amount, allocations: [...allocations] };
  const used = amount - restMinorUnits;
  refuseMoreThanCredit(request, used, creditMinorUnits, book.book.locale);
  return { ...shared, amountMinorUnits: 0, allocations: [...drawOnCredit(used, overpaid), ...allocations] };
}

const restOf = (payment: RecordedPayment) =>
  payment.allocations.reduce((rest, part) => rest - part.amountMinorUnits, payment.amountMinorUnits);

// credit that was used or paid back since would be counted although its money never came
function refuseUsedUp(found: RecordedPayment, payments: readonly RecordedPayment[]): void {
  const own = payments.filter((each) => each.payer === found.payer && each.currency === found.currency);
  const left = own.reduce((sum, each) => sum + restOf(each), 0);
  if (restOf(found) > Math.max(0, left))
    throw new Problem(
      `The credit that ${found.payment} left was used since.`,
      `${where} --reverse`,
      `Take back first what used it: ${own
        .filter((each) => each.sequence > found.sequence && restOf(each) < 0)
        .map((each) => each.payment)
        .join(', ')}.`,
      1,
    );
}

/**
 * The entry that takes a payment back which was recorded by mistake.
 * @param book the open book
 * @param name the payment, such as "PAY-0003"
 * @param day the day
 * @param because why
 * @throws Problem when there is no such payment, or it is taken back already
 */
export function reversalOf(book: OpenBook, name: string, day: string, because: string): NewPayment {
  const payments = readPayments(book);
  const found = payments.find((each) => each.payment === name.toUpperCase());
  if (found === undefined) throw new Problem(`There is no payment ${name}.`, where, 'Check its name.', 2);
  const by = payments.find((each) => each.reverses === found.payment);
  if (by !== undefined || found.reverses !== undefined)
    throw new Problem(
      by === undefined ? `${name} itself takes a payment back.` : `${name} was taken back already, by ${by.payment}.`,
      where,
      'Record the payment anew if it was right after all.',
      2,
    );
  refuseUsedUp(found, payments);
  const { payer, currency, method, reference, amountMinorUnits, allocations } = found;
  const negative = (amount: number) => (amount === 0 ? 0 : -amount);
  return {
    day,
    payer,
    ...(currency === undefined ? {} : { currency }),
    method,
    ...(reference === undefined ? {} : { reference }),
    amountMinorUnits: negative(amountMinorUnits),
    allocations: allocations.map((part) => ({ ...part, amountMinorUnits: negative(part.amountMinorUnits) })),
    reverses: found.payment,
    because,
  };
}
