import type { Book } from '../records/book.ts';
import { whole } from './answers.ts';
import type { Ask } from './question.ts';

type Series = Book['numbering']['invoice'];

async function askSeries(ask: Ask, what: string, current: Series | undefined, prefix: string): Promise<Series> {
  const begins = await ask.text(`${what} numbers begin with`, current?.prefix ?? prefix, (text) =>
    /^[A-Z][A-Z0-9-]{0,15}$/.test(text) ? null : 'Begin with a capital letter, then capitals, digits, hyphens.',
  );
  const digits = await ask.text(
    'and have this many digits',
    String(current?.digits ?? 4),
    (text) => whole(text) ?? (Number(text) < 1 || Number(text) > 10 ? 'From 1 to 10.' : null),
  );
  const start = await ask.text('and the first of them is', String(current?.start ?? 1), whole);
  const yearly = await ask.confirm(
    'Begin again each year (the year then stands in the number)?',
    current?.yearly ?? false,
  );
  return { prefix: begins, digits: Number(digits), yearly, start: Math.max(1, Number(start)) };
}

/** Number series of invoices and credit notes; those of single vans are kept. */
export async function askNumbering(ask: Ask, current: Book['numbering'] | null): Promise<Book['numbering']> {
  return {
    vans: current?.vans ?? [],
    invoice: await askSeries(ask, 'Invoice', current?.invoice, 'INV-'),
    creditNote: await askSeries(ask, 'Credit note', current?.creditNote, 'CRN-'),
  };
}

const texts = {
  accountName: 'Account holder',
  bank: 'Bank',
  iban: 'IBAN (empty when there is none)',
  bic: 'BIC (empty when there is none)',
  accountNumber: 'Account number (empty when there is an IBAN)',
  routingNumber: 'Bank routing number (empty for none)',
  lateInterest: 'What is charged when it is late, as printed (empty for nothing)',
  terms: 'Other terms, as printed (empty for none)',
} as const;

/** When and how to pay. */
export async function askPayment(ask: Ask, current: Book['payment'] | null): Promise<Book['payment']> {
  const termsDays = await ask.text(
    'Days to pay',
    String(current?.termsDays ?? 30),
    (text) => whole(text) ?? (Number(text) > 365 ? 'At most 365 days.' : null),
  );
  const answers: Partial<Record<keyof typeof texts, string>> = {};
  for (const [field, message] of Object.entries(texts) as [keyof typeof texts, string][]) {
    const text = await ask.text(message, current?.[field] ?? '');
    if (text !== '') answers[field] = text;
  }
  const others = Object.fromEntries(Object.entries(current ?? {}).filter(([field]) => !(field in texts)));
  return { ...others, termsDays: Number(termsDays), ...answers };
}
