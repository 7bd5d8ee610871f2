import { confirm, input, select } from '@inquirer/prompts';
import { type Ask, GoBack } from './question.ts';

/** Questions on the terminal; "<" in a text question goes back to the question before. */
export const askInTerminal: Ask = {
  text: async (message, usual, check) => {
    const text = await input({
      message,
      ...(usual === '' ? {} : { default: usual }),
      validate: (value) => (value.trim() === '<' ? true : (check?.(value.trim()) ?? true)),
    });
    if (text.trim() === '<') throw new GoBack();
    return text.trim();
  },
  choose: (message, choices, usual) =>
    select({ message, choices: choices.map((each) => ({ name: each, value: each })), default: usual, pageSize: 12 }),
  confirm: (message, usual) => confirm({ message, default: usual }),
};
