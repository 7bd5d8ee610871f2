import { askInLines } from './ask-in-lines.ts';
import { askInTerminal } from './ask-in-terminal.ts';
import type { Ask } from './question.ts';

/**
 * The way to ask that suits the terminal.
 * @param plain true for one plain line a question (screen readers, terminals without a movable cursor)
 */
export function askFor(plain: boolean): Ask {
  return plain
    ? askInLines({ input: process.stdin, output: process.stderr })
    : askInTerminal({ input: process.stdin, output: process.stdout });
}
