import { Problem } from '../problem.ts';

const charactersMax = 200;

/**
 * A text of the command line that is kept for good: one line, trimmed; null when it is absent or empty.
 * @param value the option's value
 * @param where command and option, for the message
 * @throws Problem when it is too long or holds control characters
 */
export function oneLine(value: unknown, where: string): string | null {
  if (typeof value !== 'string' || value.trim() === '') return null;
  const text = value.trim();
  if (text.length > charactersMax || /\p{Cc}/u.test(text))
    throw new Problem(
      'The text is longer than one line of 200 signs.',
      where,
      'Shorten it, and leave out line ends and other control characters.',
      2,
    );
  return text;
}
