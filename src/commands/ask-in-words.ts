import type { Ask } from '../prompts/question.ts';
import type { World } from './command.ts';

// loaded only when something is really asked; there is nothing before a single question to go back to
async function asked<Answer>(world: World, put: (ask: Ask) => Promise<Answer>): Promise<Answer> {
  const { askFor } = await import('../prompts/ask-for.ts');
  const { GoBack } = await import('../prompts/question.ts');
  for (;;) {
    try {
      return await put(askFor(world.plain));
    } catch (error) {
      if (!(error instanceof GoBack)) throw error;
    }
  }
}

/**
 * Asks for one line of text in the terminal.
 * @param world the outside world
 * @param message the question
 * @param check what is wrong with the answer, or null
 */
export async function askLine(
  world: World,
  message: string,
  check: (answer: string) => string | null,
): Promise<string> {
  return (await asked(world, (ask) => ask.text(message, '', (answer) => check(answer.trim())))).trim();
}

/**
 * Lets one of a list be chosen in the terminal.
 * @param world the outside world
 * @param message the question
 * @param choices what can be chosen, the usual first
 */
export async function askChoice(
  world: World,
  message: string,
  choices: readonly [string, ...string[]],
): Promise<string> {
  return asked(world, (ask) => ask.choose(message, choices, choices[0]));
}

/**
 * Lets the irreversible be confirmed by typing its name; anything else means no.
 * @param world the outside world
 * @param message what is about to happen
 * @param word what has to be typed
 */
export async function confirmByTyping(world: World, message: string, word: string): Promise<boolean> {
  const answer = await asked(world, (ask) => ask.text(`${message} Type ${word} to go on`, ''));
  return answer.trim().toUpperCase() === word.toUpperCase();
}
