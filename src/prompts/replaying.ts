import { type Ask, type Choice, storedOf } from './question.ts';

/**
 * An `Ask` that first gives the answers already known of a question, then asks; each new answer is handed on at once, so that
 * nothing typed is lost when the program is stopped between two prompts of one question.
 * @param ask how a prompt reaches a person
 * @param known answers given before, in order
 * @param offered earlier answers to offer again as the usual ones, by position
 * @param keep told all answers so far after each new one
 */
export function replaying(
  ask: Ask,
  known: readonly string[],
  offered: readonly string[],
  keep: (answers: readonly string[]) => void | Promise<void>,
): Ask {
  const answers: string[] = [];
  const next = async <T>(
    read: (text: string) => T | null,
    write: (value: T) => string,
    reach: (offer: T | null) => Promise<T>,
  ): Promise<T> => {
    const index = answers.length;
    const before = known[index];
    const replayed = before === undefined ? null : read(before);
    if (replayed !== null && before !== undefined) {
      answers.push(before);
      return replayed;
    }
    const again = offered[index];
    const value = await reach(again === undefined ? null : read(again));
    answers.push(write(value));
    await keep([...answers]);
    return value;
  };
  const truth = (text: string) => (text === 'yes' ? true : text === 'no' ? false : null);
  const yesNo = (value: boolean) => (value ? 'yes' : 'no');
  const same = (text: string) => text;
  return {
    text: (message, usual, check) =>
      next(
        (text) => (check?.(text) === undefined || check(text) === null ? text : null),
        same,
        (offer) => ask.text(message, offer ?? usual, check),
      ),
    choose: <T extends string>(message: string, choices: readonly Choice<T>[], usual: T) =>
      next<T>(
        (text) => choices.map(storedOf).find((value) => value === text) ?? null,
        (value) => value,
        (offer) => ask.choose<T>(message, choices, offer ?? usual),
      ),
    confirm: (message, usual) => next(truth, yesNo, (offer) => ask.confirm(message, offer ?? usual)),
    decide: (message) => next(truth, yesNo, () => ask.decide(message)),
    tick: (message, items, usual) =>
      next<readonly string[]>(
        (text) => {
          const ticked = text === '' ? [] : text.split('|');
          return ticked.every((each) => items.includes(each)) ? ticked : null;
        },
        (ticked) => ticked.join('|'),
        (offer) => ask.tick(message, items, offer ?? usual),
      ),
  };
}
