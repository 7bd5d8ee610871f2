import { verifyWholeBook } from '../operations/verify-whole-book.ts';
import { openBook } from '../storage/open-book.ts';
import type { Command } from './command.ts';

/** `keyout verify`: the whole book, nothing missing, nothing altered, no number skipped. */
export const verify: Command = {
  options: {},
  run: async (_call, world) => {
    const book = openBook(world.bookFolder);
    const { damage, lines, seal } = verifyWholeBook(book);
    if (world.json) world.say(JSON.stringify(damage, null, 2));
    else if (damage.length === 0)
      world.say(
        [
          `The book is whole: ${lines} ledger lines, every file as issued, no number skipped.`,
          ...(seal === null
            ? []
            : [`Line ${seal.line} ends with ${seal.digest}: noted outside the book, it proves the book.`]),
        ].join('\n'),
      );
    else world.say(damage.map((each) => `${each.where}\n  ${each.what}\n  to do: ${each.whatToDo}`).join('\n'));
    return damage.length === 0 ? 0 : 1;
  },
};
