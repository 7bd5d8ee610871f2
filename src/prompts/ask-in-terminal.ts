import { checkbox, confirm, input, select } from '@inquirer/prompts';
import { type Ask, GoBack } from './question.ts';

type Key = { readonly name?: string; readonly ctrl?: boolean };

/** Runs a prompt that Escape or Ctrl-G leaves towards the prompt before. */
async function withWayBack<T>(prompt: (signal: AbortSignal) => Promise<T>): Promise<T> {
  const controller = new AbortController();
  const onKey = (_: unknown, key: Key | undefined) => {
    if (key?.name === 'escape' || (key?.ctrl === true && key.name === 'g')) controller.abort();
  };
  process.stdin.on('keypress', onKey);
  try {
    return await prompt(controller.signal);
  } catch (error) {
    if (controller.signal.aborted) throw new GoBack();
    throw error;
  } finally {
    process.stdin.off('keypress', onKey);
  }
}

/** Questions on the terminal; Escape, Ctrl-G or a typed "<" goes back to the prompt before. */
export const askInTerminal: Ask = {
  text: async (message, usual, check) => {
    const text = await withWayBack((signal) =>
      input(
        {
          message,
          ...(usual === '' ? {} : { default: usual }),
          validate: (value) => (value.trim() === '<' ? true : (check?.(value.trim()) ?? true)),
        },
        { signal },
      ),
    );
    if (text.trim() === '<') throw new GoBack();
    // a single hyphen takes the usual answer away again
    return usual !== '' && text.trim() === '-' ? '' : text.trim();
  },
  choose: (message, choices, usual) =>
    withWayBack((signal) =>
      select(
        {
          message,
          choices: choices.map((each) => (typeof each === 'string' ? { name: each, value: each } : each)),
          default: usual,
          pageSize: 12,
        },
        { signal },
      ),
    ),
  confirm: (message, usual) => withWayBack((signal) => confirm({ message, default: usual }, { signal })),
  decide: async (message) => {
    const text = await withWayBack((signal) =>
      input(
        {
          message: `${message} (y or n)`,
          validate: (value) => (/^(y|yes|n|no|<)$/i.test(value.trim()) ? true : 'Type y or n.'),
        },
        { signal },
      ),
    );
    if (text.trim() === '<') throw new GoBack();
    return /^y/i.test(text.trim());
  },
  tick: (message, items, usual) =>
    withWayBack((signal) =>
      checkbox(
        {
          message,
          choices: items.map((each) => ({ name: each, value: each, checked: usual.includes(each) })),
          pageSize: 12,
        },
        { signal },
      ),
    ),
};
