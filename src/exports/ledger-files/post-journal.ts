import type { IssuedInvoice } from '../../records/issued-invoice.ts';
import { currencyOfPayments, type ExportInput, type MoneyEntry, signed } from '../export-input.ts';
import { discountAccount } from '../tables/lines-table.ts';

/** One side of a booking: debit above zero, credit below. */
export type Posting = {
  readonly account: string;
  /** which side of the aged balances it moves; accounts may be mapped to one number */
  readonly role: 'receivable' | 'customer credit' | 'other';
  readonly text: string;
  readonly amountMinorUnits: number;
};

/** A booking whose postings sum to zero. */
export type JournalEntry = {
  readonly sequence: number;
  readonly day: string;
  readonly document: string;
  readonly payer: string;
  readonly currency: string;
  readonly postings: readonly Posting[];
};

const posting = (
  account: string,
  text: string,
  amountMinorUnits: number,
  role: Posting['role'] = 'other',
): Posting => ({ account, role, text, amountMinorUnits });

/**
 * The journal from the first ledger line to the last day of the period, by day, then in the ledger's order; documents first paid
 * beyond what is owed on them move to the customer-credit account, so that accounts and aged balances agree.
 * @param input documents, ledger and accounts
 */
export function postJournal(input: ExportInput): readonly JournalEntry[] {
  const documents = new Map(input.documents.map((each) => [each.number, each]));
  const balances = new Map<string, number>();
  const currencyOf = currencyOfPayments(input);
  const move = (invoice: string, change: number, text: string): readonly Posting[] => {
    const before = balances.get(invoice) ?? 0;
    const after = before + change;
    balances.set(invoice, after);
    return [
      posting(input.accounts.receivable, text, Math.max(after, 0) - Math.max(before, 0), 'receivable'),
      posting(input.accounts.customerCredit, text, Math.min(after, 0) - Math.min(before, 0), 'customer credit'),
    ];
  };
  return input.entries
    .filter(
      (entry): entry is MoneyEntry => ['issued', 'credited', 'paid'].includes(entry.event) && entry.day <= input.to,
    )
    .toSorted((one, other) => (one.day === other.day ? one.sequence - other.sequence : one.day < other.day ? -1 : 1))
    .flatMap((entry): readonly JournalEntry[] => {
      if (entry.event === 'paid') return [paymentEntry(input, entry, currencyOf(entry), move)];
      const document = documents.get(entry.number);
      return document === undefined ? [] : [documentEntry(input, entry, document, move)];
    });
}

type Move = (invoice: string, change: number, text: string) => readonly Posting[];

function documentEntry(input: ExportInput, entry: MoneyEntry, document: IssuedInvoice, move: Move): JournalEntry {
  const { accounts } = input;
  const { totals, lines, allowances, taxes } = document;
  const text = `${document.type === 'invoice' ? 'Invoice' : 'Credit note'} ${document.number}`;
  const amount = (minorUnits: number) => signed(document, minorUnits);
  const invoice = document.corrects?.number ?? document.number;
  const owed = totals.dueMinorUnits + totals.paidMinorUnits;
  const byAccount = new Map<string, number>();
  for (const line of lines)
    byAccount.set(line.incomeAccount, (byAccount.get(line.incomeAccount) ?? 0) + line.netMinorUnits);
  const postings = [
    ...move(invoice, amount(owed), text),
    ...[...byAccount].map(([account, net]) => posting(account, text, amount(-net))),
    ...allowances.map((each) =>
      posting(
        discountAccount(accounts),
        each.because,
        amount(each.charge ? -each.amountMinorUnits : each.amountMinorUnits),
      ),
    ),
    ...taxes.map((group) => posting(accounts.tax, `${group.name}, ${text}`, amount(-group.taxMinorUnits))),
    posting(accounts.deposits, `Deposit, ${text}`, amount(totals.paidMinorUnits)),
    ...move(invoice, amount(-totals.paidMinorUnits), `Deposit, ${text}`),
  ];
  const over = postings.reduce((sum, each) => sum - each.amountMinorUnits, 0);
  return {
    sequence: entry.sequence,
    day: entry.day,
    document: document.number,
    payer: document.payerId,
    currency: document.currency,
    postings: kept([...postings, posting(accounts.rounding, `Rounding, ${text}`, over)]),
  };
}

function paymentEntry(
  input: ExportInput,
  entry: Extract<MoneyEntry, { event: 'paid' }>,
  currency: string,
  move: Move,
): JournalEntry {
  const { accounts } = input;
  const text = `Payment ${entry.payment}`;
  const rest = entry.allocations.reduce((sum, part) => sum - part.amountMinorUnits, entry.amountMinorUnits);
  return {
    sequence: entry.sequence,
    day: entry.day,
    document: entry.payment,
    payer: entry.payer,
    currency,
    postings: kept([
      posting(accounts.bank, text, entry.amountMinorUnits),
      ...entry.allocations.flatMap((part) => move(part.invoice, -part.amountMinorUnits, `${text}, ${part.invoice}`)),
      posting(accounts.customerCredit, `${text}, not allocated`, -rest, 'customer credit'),
    ]),
  };
}

function kept(postings: readonly Posting[]): readonly Posting[] {
  return postings.filter((each) => each.amountMinorUnits !== 0);
}
