import { structuredInvoice } from '../../src/exports/structured/structured-invoice.ts';
import { draftInvoice } from '../../src/operations/draft-invoice.ts';
import { drawFiles } from '../../src/operations/draw-files.ts';
import type { IssuedInvoice } from '../../src/records/issued-invoice.ts';
import type { JobInput } from '../../src/records/job.ts';
import { changeBook } from '../../src/storage/change-book.ts';
import type { DrawFiles } from '../../src/storage/changing-book.ts';
import { issueDocument } from '../../src/storage/issue-document.ts';
import { readJob } from '../../src/storage/jobs.ts';
import { openBook } from '../../src/storage/open-book.ts';
import { callKeyout } from '../end-to-end/call-keyout.ts';
import type { Month } from './make-month.ts';
import { type NaiveDocument, type NaiveLine, naiveCredit, naiveInvoice, naiveRest, total } from './naive-oracle.ts';
import type { SeededRandom } from './seeded-random.ts';

/** A document as issued beside the same computed naively. */
export type Pair = { readonly issued: IssuedInvoice; readonly naive: NaiveDocument; readonly corrects: string | null };
/** A payment as the test made it. */
export type NaivePayment = {
  readonly day: string;
  readonly payer: string;
  readonly amount: number;
  readonly parts: readonly { readonly invoice: string; readonly amount: number }[];
};

/** What a document adds to its payer's debt before any payment but the deposit. */
export const owedOn = (document: NaiveDocument): number => document.gross + document.rounding;

function groupsOf(month: Month): { day: string; jobs: JobInput[] }[] {
  const groups = new Map<string, { day: string; jobs: JobInput[] }>();
  for (const job of month.jobs) {
    const payer = month.payers.find((each) => each.id === job.identity?.payer);
    const week = Math.trunc((Number(job.day.slice(8)) - 2) / 7);
    const key = payer?.perWeek === true ? `${payer.id} ${week}` : job.id;
    const group = groups.get(key) ?? { day: job.day, jobs: [] };
    groups.set(key, { day: job.day, jobs: [...group.jobs, job] });
  }
  return [...groups.values()].sort((one, other) => (one.day < other.day ? -1 : 1));
}

// every twenty-fifth document is printed; the others have a few words for their PDF, since printing is proved elsewhere
function drawSome(folder: string): DrawFiles {
  const all = drawFiles(openBook(folder));
  return async (numbered) => {
    if (Number(numbered.number.slice(-4)) % 25 === 1) return all(numbered);
    const structured = structuredInvoice(numbered);
    return [
      { name: 'invoice.pdf', content: numbered.number },
      ...('xml' in structured ? [{ name: 'invoice.xml', content: structured.xml }] : []),
    ];
  };
}

/** Issues an invoice for every job of the month, by the vehicle or by the payer's week. */
export async function issueMonth(folder: string, month: Month): Promise<Pair[]> {
  const book = openBook(folder);
  const pairs: Pair[] = [];
  for (const { day, jobs } of groupsOf(month)) {
    const records = jobs.map((job) => readJob(book, job.id));
    const document = await changeBook(book, { now: `${day}T20:00:00Z`, draw: drawSome(folder) }, async (changing) =>
      issueDocument(changing, { draft: await draftInvoice(book, records, day), van: null }),
    );
    pairs.push({ issued: document.invoice, naive: naiveInvoice(month, jobs), corrects: null });
  }
  return pairs;
}

async function call<Value>(folder: string, today: string, ...words: string[]): Promise<Value> {
  const result = await callKeyout([...words, '--book', folder, '--today', today, '--json']);
  if (result.exitCode !== 0) throw new Error(`${words.join(' ')}: ${result.err}`);
  return JSON.parse(result.out) as Value;
}

const inUnits = (cents: number): string => `${Math.trunc(cents / 100)}.${String(cents % 100).padStart(2, '0')}`;

/** The place in the naive list of a line as issued. */
function placeOf(naive: readonly NaiveLine[], issued: IssuedInvoice, number: number): number {
  const line = issued.lines.find((each) => each.number === number);
  return naive.findIndex(
    (each) => each.job === line?.job && each.kind === line.kind && each.net === line.netMinorUnits,
  );
}

/** Credits every ninth invoice: whole, by lines, by amount, or by amount and then the rest. */
export async function creditSome(folder: string, month: Month, pairs: readonly Pair[], random: SeededRandom) {
  const notes: Pair[] = [];
  for (const { issued, naive } of pairs.filter((_, place) => place % 9 === 4)) {
    const credit = (...words: string[]) =>
      call<IssuedInvoice>(folder, '2026-11-30', 'credit', issued.number, '--because', 'agreed', ...words);
    const note = async (expected: NaiveDocument, ...words: string[]) => {
      notes.push({ issued: await credit(...words), naive: expected, corrects: issued.number });
    };
    const form = random.below(4);
    if (form === 0) {
      await note(naiveCredit(month, naive, new Map(naive.lines.map((line, place) => [place, line.net]))));
      continue;
    }
    const numbers = issued.lines.map((line) => line.number).filter(() => random.chance(0.4));
    const chosen = numbers.length === 0 ? [1] : numbers;
    const amounts = new Map(
      chosen.map((number) => {
        const place = placeOf(naive.lines, issued, number);
        const net = naive.lines[place]?.net ?? 0;
        return [place, form === 1 ? net : 1 + random.below(net)] as const;
      }),
    );
    const words = chosen.flatMap((number, turn) => [
      '--line',
      form === 1 ? String(number) : `${number}:amount=${inUnits([...amounts.values()][turn] ?? 0)}`,
    ]);
    const first = naiveCredit(month, naive, amounts);
    await note(first, ...words);
    if (form === 3) await note(naiveRest(month, naive, first, amounts));
  }
  return notes;
}

/** What is still owed on each invoice by the test's own account. */
export function naiveBalances(
  pairs: readonly Pair[],
  notes: readonly Pair[],
  payments: readonly NaivePayment[],
  day = '9999-12-31',
): Map<string, number> {
  const balances = new Map<string, number>();
  for (const { issued, naive } of pairs)
    if (issued.issued <= day) balances.set(issued.number, owedOn(naive) - naive.deposit);
  const less = (number: string, amount: number) => balances.set(number, (balances.get(number) ?? 0) - amount);
  for (const { issued, naive, corrects } of notes) if (issued.issued <= day) less(corrects ?? '', owedOn(naive));
  for (const payment of payments.filter((each) => each.day <= day))
    for (const part of payment.parts) less(part.invoice, part.amount);
  return balances;
}

/** Pays in part, in full, over, and several at once; on about two invoices of three. */
export async function paySome(
  folder: string,
  pairs: readonly Pair[],
  notes: readonly Pair[],
  random: SeededRandom,
): Promise<NaivePayment[]> {
  const payments: NaivePayment[] = [];
  const ordered = [...pairs].sort((one, other) =>
    `${one.issued.due} ${one.issued.issued} ${one.issued.number}` <
    `${other.issued.due} ${other.issued.issued} ${other.issued.number}`
      ? -1
      : 1,
  );
  for (let turn = 0; turn < 40; turn += 1) {
    const payer = random.pick(pairs).naive.payer;
    const balances = naiveBalances(pairs, notes, payments);
    const open = ordered.filter((each) => each.naive.payer === payer && (balances.get(each.issued.number) ?? 0) > 0);
    const chosen = open.filter(() => random.chance(0.2)).slice(0, 6);
    if (chosen.length === 0) continue;
    const sum = total(chosen.map((each) => balances.get(each.issued.number) ?? 0));
    const amount = random.pick([sum, sum, 1 + random.below(sum), sum + 1 + random.below(5000)]);
    const day = turn < 20 ? `2026-11-${10 + turn}` : `2026-12-${turn - 10}`;
    let left = amount;
    const parts = chosen.flatMap((each) => {
      const part = Math.min(left, balances.get(each.issued.number) ?? 0);
      left -= part;
      return part === 0 ? [] : [{ invoice: each.issued.number, amount: part }];
    });
    await call(
      folder,
      '2027-03-01',
      'paid',
      ...chosen.map((each) => each.issued.number).toReversed(),
      ...['--amount', inUnits(amount), '--day', day, '--method', 'bank transfer', '--reference', `T ${turn}`],
    );
    payments.push({ day, payer, amount, parts });
  }
  return payments;
}
