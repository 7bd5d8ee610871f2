import { creditInvoice, draftCredit } from '../operations/credit-invoice.ts';
import { lackingOf } from '../operations/lacking-of.ts';
import { namedInvoice } from '../operations/named-invoice.ts';
import { Problem } from '../problem.ts';
import { writeMoney } from '../quantities/write-money.ts';
import type { IssuedInvoice } from '../records/issued-invoice.ts';
import { openBook } from '../storage/open-book.ts';
import { askLine, confirmByTyping } from './ask-in-words.ts';
import type { Call, Command, World } from './command.ts';
import { momentOf } from './moment-of.ts';
import { oneLine } from './one-line.ts';
import { readLineOptions } from './read-line-options.ts';

const listOf = (value: unknown): readonly string[] => (Array.isArray(value) ? value : []);

async function reasonOf(call: Call, world: World): Promise<string> {
  const given = oneLine(call.options.because, 'keyout credit --because');
  if (given !== null) return given;
  if (!world.mayAsk) throw new Problem('No reason is given.', 'keyout credit', 'Give it: --because "billed twice".', 2);
  return askLine(world, 'Why is it credited? (printed on the credit note)', (answer) =>
    answer === '' || answer.length > 200 ? 'A credit note needs a reason of at most 200 signs.' : null,
  );
}

function writePreview(note: IssuedInvoice, locale: string): string {
  const money = (minorUnits: number) => writeMoney(minorUnits, note.currency, locale);
  return [
    `Credit note to ${note.payer.name}, correcting ${note.corrects?.number}: ${note.corrects?.because}`,
    ...note.lines.map((line) => `  ${line.what.padEnd(52).slice(0, 52)} ${money(line.netMinorUnits).padStart(12)}`),
    `  ${'tax'.padEnd(52)} ${money(note.totals.taxMinorUnits).padStart(12)}`,
    `  ${'total'.padEnd(52)} ${money(note.totals.dueMinorUnits).padStart(12)}`,
  ].join('\n');
}

/** `keyout credit INVOICE`: a credit note over an invoice or some of its lines; nothing issued is ever changed. */
export const credit: Command = {
  options: {
    line: {
      type: 'string',
      multiple: true,
      takes: 'N[:QUANTITY]',
      help: 'a line to take back, whole, in part (2:1.5) or by amount (2:amount=12.50); without any: all that is left',
    },
    because: { type: 'string', takes: 'TEXT', help: 'the reason, printed on the credit note' },
    draft: { type: 'boolean', help: 'show what would be issued, issue nothing' },
    yes: { type: 'boolean', help: 'do not ask for confirmation' },
  },
  run: async (call, world) => {
    const [number, more] = call.words;
    if (number === undefined || more !== undefined)
      throw new Problem('Exactly one invoice is named.', 'keyout credit', 'Write `keyout credit INV-0042`.', 2);
    const book = openBook(world.bookFolder);
    const { invoice } = namedInvoice(book, number, 'keyout credit');
    const texts = listOf(call.options.line);
    const lines = texts.length === 0 ? ('all' as const) : readLineOptions(texts, invoice.currency);
    const because = await reasonOf(call, world);
    const moment = momentOf(book, world);
    const request = { invoice, lines, because };
    const preview = draftCredit(book, request, moment.today);
    if (call.options.draft === true) {
      world.say(world.json ? JSON.stringify(preview, null, 2) : writePreview(preview, book.book.locale));
      return 0;
    }
    if (world.mayAsk && call.options.yes !== true) {
      world.tell(writePreview(preview, book.book.locale));
      if (!(await confirmByTyping(world, 'A credit note cannot be taken back.', invoice.number))) {
        world.tell('Nothing was issued.');
        return 1;
      }
    }
    const made = await creditInvoice(book, request, moment);
    const lacking = lackingOf(made.invoice);
    if (lacking !== null) world.tell(lacking);
    const amount = writeMoney(made.invoice.totals.dueMinorUnits, made.invoice.currency, book.book.locale);
    world.say(
      world.json
        ? JSON.stringify(made.invoice, null, 2)
        : `${made.number}  credits ${amount} of ${invoice.number}  ${made.pdfPath}`,
    );
    return 0;
  },
};
