import { balancesOf, type PaymentRequest } from '../operations/compose-payment.ts';
import { namedInvoice } from '../operations/named-invoice.ts';
import { Problem } from '../problem.ts';
import { isCalendarDate } from '../quantities/calendar-date.ts';
import { readMoney } from '../quantities/read-money.ts';
import { writeMoney } from '../quantities/write-money.ts';
import type { OpenBook } from '../storage/open-book.ts';
import { askChoice, askLine } from './ask-in-words.ts';
import type { Call, World } from './command.ts';
import { oneLine } from './one-line.ts';

const where = 'keyout paid';

function moneyOf(typed: string, currency: string, place: string): number {
  const amount = readMoney(typed, currency);
  if (amount === null || amount === 0)
    throw new Problem(
      `"${typed}" is no amount in ${currency}.`,
      place,
      'Write it like 1234.50, without signs or separators of thousands.',
      2,
    );
  return amount;
}

/**
 * The day of a payment: `--day`, else today.
 * @throws Problem when the day does not exist
 */
export function paymentDay(call: Call, world: World, book: OpenBook): string {
  const today = world.today(book.book.timeZone);
  const day = oneLine(call.options.day, `${where} --day`) ?? today;
  if (!isCalendarDate(day))
    throw new Problem(`"${day}" is not a date that exists.`, `${where} --day`, 'Write it like 2026-11-24.', 2);
  if (day > today) world.tell(`Mind: ${day} is still to come.`);
  return day;
}

function invoicesNamed(call: Call, book: OpenBook) {
  const named = call.words.map((word) => {
    const [number = '', ...amount] = word.split('=');
    const { invoice } = namedInvoice(book, number, where);
    const typed = amount.join('=');
    const amountMinorUnits = word.includes('=') ? moneyOf(typed, invoice.currency, `${where} ${word}`) : null;
    return { invoice, amountMinorUnits };
  });
  const twice = named.find(
    (each, place) => named.findIndex((one) => one.invoice.number === each.invoice.number) !== place,
  );
  if (twice !== undefined)
    throw new Problem(`${twice.invoice.number} is named twice.`, where, 'Name each invoice once.', 2);
  return named;
}

function payerOf(call: Call, book: OpenBook, invoices: ReturnType<typeof invoicesNamed>): string {
  const payers = [...new Set(invoices.map((each) => each.invoice.payerId))];
  const given = oneLine(call.options.payer, `${where} --payer`);
  if (given !== null && !book.payers.has(given) && !payers.includes(given))
    throw new Problem(
      `The book knows no payer "${given}".`,
      `${where} --payer`,
      `Use one of ${[...book.payers.keys()].join(', ')}.`,
      2,
    );
  const all = [...new Set([...payers, ...(given === null ? [] : [given])])];
  const [only] = all;
  if (only === undefined)
    throw new Problem('No invoice is named.', where, 'Name the invoices paid, or the payer: --payer north-fleet.', 2);
  if (all.length > 1)
    throw new Problem(
      `The invoices are of different payers: ${all.join(', ')}.`,
      where,
      'Record one payment for each payer.',
      2,
    );
  return only;
}

/**
 * A payment as the command line asks for it; what is missing is asked for where there is a terminal.
 * @param call the call
 * @param world the outside world
 * @param book the open book
 * @throws Problem naming the option that is missing or wrong
 */
export async function paymentRequest(call: Call, world: World, book: OpenBook): Promise<PaymentRequest> {
  const { 'use-credit': useCredit, refund } = call.options;
  if (useCredit === true && refund === true)
    throw new Problem('Credit is either used or paid back.', where, 'Give one of --use-credit and --refund.', 2);
  const kind = useCredit === true ? 'use of credit' : refund === true ? 'refund' : 'payment';
  const invoices = invoicesNamed(call, book);
  const payer = payerOf(call, book, invoices);
  const currency = invoices[0]?.invoice.currency ?? book.book.currency;
  if (invoices.some((each) => each.invoice.currency !== currency))
    throw new Problem('The invoices are in different currencies.', where, 'Record one payment for each.', 2);
  const named = invoices.map(({ invoice, amountMinorUnits }) => ({ invoice: invoice.number, amountMinorUnits }));
  const day = paymentDay(call, world, book);
  const amount = await amountOf(call, world, book, { kind, payer, currency, named });
  const method = kind === 'use of credit' ? 'credit' : await methodOf(call, world);
  const reference = oneLine(call.options.reference, `${where} --reference`);
  const because = oneLine(call.options.because, `${where} --because`);
  return {
    kind,
    payer,
    currency,
    amountMinorUnits: amount,
    named,
    day,
    method,
    ...(reference === null ? {} : { reference }),
    ...(because === null ? {} : { because }),
  };
}

async function amountOf(
  call: Call,
  world: World,
  book: OpenBook,
  request: Pick<PaymentRequest, 'kind' | 'payer' | 'currency' | 'named'>,
): Promise<number | null> {
  const given = oneLine(call.options.amount, `${where} --amount`);
  if (given !== null) return moneyOf(given, request.currency, `${where} --amount`);
  if (request.kind !== 'payment') return null;
  if (request.named.length > 0 && request.named.every((each) => each.amountMinorUnits !== null))
    return request.named.reduce((sum, each) => sum + (each.amountMinorUnits ?? 0), 0);
  if (!world.mayAsk) throw new Problem('No amount is given.', where, 'Give what was paid: --amount 1234.50.', 2);
  const open = balancesOf(book, request.payer, request.currency)
    .documents.filter((each) => request.named.length === 0 || request.named.some((one) => one.invoice === each.number))
    .reduce((sum, each) => sum + Math.max(0, each.balanceMinorUnits), 0);
  const typed = await askLine(
    world,
    `How much was paid? (${writeMoney(open, request.currency, book.book.locale)} is open)`,
    (answer) => ((readMoney(answer, request.currency) ?? 0) > 0 ? null : 'Write it like 1234.50.'),
  );
  return readMoney(typed, request.currency);
}

async function methodOf(call: Call, world: World): Promise<string> {
  const given = oneLine(call.options.method, `${where} --method`);
  if (given !== null) return given;
  if (!world.mayAsk)
    throw new Problem('No method is given.', where, 'Give how it was paid: --method "bank transfer".', 2);
  return askChoice(world, 'How was it paid?', ['bank transfer', 'card', 'cash', 'cheque', 'direct debit', 'other']);
}
