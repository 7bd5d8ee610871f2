import type { Moment } from '../operations/moment.ts';
import type { OpenBook } from '../storage/open-book.ts';
import type { World } from './command.ts';

/** The moment at which a command acts on a book. */
export function momentOf(book: OpenBook, world: World): Moment {
  return { now: world.now(), today: world.today(book.book.timeZone), van: world.van ?? null };
}
