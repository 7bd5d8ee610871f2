import { balancesOf, composePayment, reversalOf } from '../operations/compose-payment.ts';
import { listedPayments } from '../operations/listed-payments.ts';
import { takePayment } from '../operations/take-payment.ts';
import { Problem } from '../problem.ts';
import { writeMoney } from '../quantities/write-money.ts';
import { type OpenBook, openBook } from '../storage/open-book.ts';
import { likePayment, type NewPayment, type RecordedPayment, readPayments } from '../storage/record-payment.ts';
import { askLine, confirmByTyping } from './ask-in-words.ts';
import type { Call, Command, World } from './command.ts';
import { oneLine } from './one-line.ts';
import { paymentDay, paymentRequest } from './payment-request.ts';
import { writePaymentList } from './write-payment-list.ts';

async function composer(call: Call, world: World, book: OpenBook): Promise<() => NewPayment> {
  const name = call.options.reverse;
  if (typeof name !== 'string') {
    const request = await paymentRequest(call, world, book);
    return () => composePayment(book, request);
  }
  const given = oneLine(call.options.because, 'keyout paid --because');
  if (given === null && !world.mayAsk)
    throw new Problem('No reason is given.', 'keyout paid --reverse', 'Give it: --because "typed twice".', 2);
  const because =
    given ??
    (await askLine(world, 'Why is it taken back?', (answer) =>
      answer === '' || answer.length > 200 ? 'A reason of at most 200 signs is needed.' : null,
    ));
  const day = paymentDay(call, world, book);
  return () => reversalOf(book, name, day, because);
}

function writePayment(book: OpenBook, payment: RecordedPayment): string {
  const currency = payment.currency ?? book.book.currency;
  const money = (minorUnits: number) => writeMoney(minorUnits, currency, book.book.locale);
  const { documents } = balancesOf(book, payment.payer, currency);
  const rest = payment.allocations.reduce((left, part) => left - part.amountMinorUnits, payment.amountMinorUnits);
  const parts = payment.allocations.map((part) => {
    const balance = documents.find((each) => each.number === part.invoice)?.balanceMinorUnits ?? 0;
    const after = balance === 0 ? 'settled' : balance > 0 ? `${money(balance)} still open` : `${money(-balance)} over`;
    return `  ${part.invoice.padEnd(16)} ${money(part.amountMinorUnits).padStart(12)}  ${after}`;
  });
  const word = rest > 0 ? 'kept as credit' : payment.reverses === undefined ? 'of credit used' : 'of credit taken back';
  return [
    `${payment.payment}  ${money(payment.amountMinorUnits)}  ${payment.payer}, ${payment.day}, ${payment.method}${payment.reverses === undefined ? '' : `, takes back ${payment.reverses}`}`,
    ...parts,
    ...(rest === 0 ? [] : [`  ${money(Math.abs(rest))} ${word}`]),
  ].join('\n');
}

// the same call typed twice must not count the same money twice
async function mayBeAgain(book: OpenBook, payment: NewPayment, call: Call, world: World): Promise<boolean> {
  const like = payment.reverses === undefined ? likePayment(readPayments(book), payment) : null;
  if (like === null || call.options.again === true) return true;
  const money = writeMoney(like.amountMinorUnits, like.currency ?? book.book.currency, book.book.locale);
  const what = `${like.payment} looks like the same payment: ${money} from ${like.payer} on ${like.day}${like.reference === undefined ? '' : `, reference ${like.reference}`}.`;
  if (!world.mayAsk) throw new Problem(what, 'keyout paid', 'If it is another payment, say so with --again.', 1);
  world.tell(what);
  return confirmByTyping(world, 'If it is another payment, it is recorded too.', 'AGAIN');
}

/** `keyout paid INVOICE…`: record a payment, in part, in full or over, of one invoice or several. */
export const paid: Command = {
  options: {
    amount: {
      type: 'string',
      takes: 'AMOUNT',
      help: 'what was paid, such as 1234.50; oldest due first, the rest is kept as credit',
    },
    day: { type: 'string', takes: 'DATE', help: 'the day of the payment (default: today)' },
    method: { type: 'string', takes: 'TEXT', help: 'how: bank transfer, card, cash, cheque, …' },
    reference: { type: 'string', takes: 'TEXT', help: 'the payer’s or the bank’s reference' },
    payer: { type: 'string', takes: 'ID', help: 'instead of invoices: all that the payer has open' },
    'use-credit': { type: 'boolean', help: 'no money came: the payer’s credit is used' },
    refund: { type: 'boolean', help: 'money is paid back from the payer’s credit' },
    reverse: { type: 'string', takes: 'PAYMENT', help: 'take back a payment recorded by mistake (PAY-0003)' },
    because: { type: 'string', takes: 'TEXT', help: 'why, kept in the ledger' },
    again: { type: 'boolean', help: 'record it although a payment like it was recorded' },
    list: { type: 'boolean', help: 'record nothing, list the payments recorded (of --payer)' },
  },
  run: async (call, world) => {
    const book = openBook(world.bookFolder);
    if (call.options.list === true) {
      const listed = listedPayments(book, oneLine(call.options.payer, 'keyout paid --payer'));
      world.say(world.json ? JSON.stringify(listed, null, 2) : writePaymentList(book, listed));
      return 0;
    }
    const compose = await composer(call, world, book);
    if (!(await mayBeAgain(book, compose(), call, world))) {
      world.tell('Nothing was recorded.');
      return 1;
    }
    const mayRepeat = world.mayAsk || call.options.again === true;
    const recorded = await takePayment(book, compose, { now: world.now(), mayRepeat });
    world.say(world.json ? JSON.stringify(recorded, null, 2) : writePayment(book, recorded));
    return 0;
  },
};
