/**
 * Asks for one line of text in the terminal; loaded only when something is really asked.
 * @param message the question
 * @param judge true, or what is wrong with the answer
 */
export async function askLine(message: string, judge: (answer: string) => true | string): Promise<string> {
  const { input } = await import('@inquirer/prompts');
  return (await input({ message, validate: (answer) => judge(answer.trim()) })).trim();
}

/**
 * Lets the irreversible be confirmed by typing its name; anything else means no.
 * @param message what is about to happen, ending with what to type
 * @param word what has to be typed
 */
export async function confirmByTyping(message: string, word: string): Promise<boolean> {
  const { input } = await import('@inquirer/prompts');
  const answer = await input({ message: `${message} Type ${word} to go on:` });
  return answer.trim().toUpperCase() === word.toUpperCase();
}
