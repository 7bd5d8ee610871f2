import { type Ask, GoBack } from './question.ts';
import { replaying } from './replaying.ts';

/**
 * Runs a row of prompts that can be gone back in, and gone on with after it was stopped.
 * @param ask how a prompt reaches a person
 * @param known answers given in an earlier sitting
 * @param keep told all answers so far after each new one
 * @param row the prompts
 */
export async function resumable<T>(
  ask: Ask,
  known: readonly string[],
  keep: (answers: readonly string[]) => void,
  row: (ask: Ask) => Promise<T>,
): Promise<T> {
  let answers = known;
  let offered: readonly string[] = [];
  for (;;) {
    try {
      return await row(
        replaying(ask, answers, offered, (given) => {
          answers = given;
          keep(given);
        }),
      );
    } catch (error) {
      if (!(error instanceof GoBack)) throw error;
      offered = answers;
      answers = answers.slice(0, -1);
    }
  }
}
