import { readLedger } from '../storage/ledger.ts';
import { readHead } from '../storage/ledger-head.ts';
import { type OpenBook, openBook } from '../storage/open-book.ts';
import { verifyBook } from '../storage/verify-book.ts';
import type { Command } from './command.ts';

// who can write in the book can also make a new chain: only a digest kept elsewhere shows that
function sealLines(book: OpenBook): readonly string[] {
  const head = readHead(book);
  return head === null
    ? []
    : [`Line ${head.lines} ends with ${head.last}: noted outside the book, it proves the book.`];
}

/** `keyout verify`: the whole book, nothing missing, nothing altered, no number skipped. */
export const verify: Command = {
  name: 'verify',
  words: '',
  summary: 'the whole book: nothing missing, nothing altered, no number skipped',
  options: {},
  run: async (_call, world) => {
    const book = openBook(world.bookFolder);
    const damage = verifyBook(book);
    if (world.json) world.say(JSON.stringify(damage, null, 2));
    else if (damage.length === 0)
      world.say(
        [
          `The book is whole: ${readLedger(book).length} ledger lines, every file as issued, no number skipped.`,
          ...sealLines(book),
        ].join('\n'),
      );
    else world.say(damage.map((each) => `${each.where}\n  ${each.what}\n  to do: ${each.whatToDo}`).join('\n'));
    return damage.length === 0 ? 0 : 1;
  },
};
