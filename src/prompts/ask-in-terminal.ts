import inquirer, { type DistinctQuestion } from 'inquirer';
import { type Ask, type Choice, GoBack, nameOf, storedOf } from './question.ts';

type Key = { readonly name?: string; readonly ctrl?: boolean };

/** Where keys come from and what is drawn goes to. */
export type Terminal = { readonly input: NodeJS.ReadableStream; readonly output: NodeJS.WritableStream };

/**
 * Questions on the terminal; Escape, Ctrl-G or a typed "<" goes back to the prompt before.
 * @param terminal where keys come from and what is drawn goes to
 */
export function askInTerminal(terminal: Terminal): Ask {
  /** Runs a prompt that Escape or Ctrl-G leaves towards the prompt before. */
  async function answerTo<T>(prompt: DistinctQuestion): Promise<T> {
    const controller = new AbortController();
    const onKey = (_: unknown, key: Key | undefined) => {
      if (key?.name === 'escape' || (key?.ctrl === true && key.name === 'g')) controller.abort();
    };
    terminal.input.on('keypress', onKey);
    try {
      const ask = inquirer.createPromptModule({ ...terminal, signal: controller.signal });
      const answers = (await ask([prompt])) as { readonly answer: T };
      return answers.answer;
    } catch (error) {
      if (controller.signal.aborted) throw new GoBack();
      throw error;
    } finally {
      terminal.input.off('keypress', onKey);
    }
  }
  return {
    text: async (message, usual, check) => {
      const text = await answerTo<string>({
        type: 'input',
        name: 'answer',
        message,
        ...(usual === '' ? {} : { default: usual }),
        validate: (value: string) => (value.trim() === '<' ? true : (check?.(value.trim()) ?? true)),
      });
      if (text.trim() === '<') throw new GoBack();
      // a single hyphen takes the usual answer away again
      return usual !== '' && text.trim() === '-' ? '' : text.trim();
    },
    choose: <T extends string>(message: string, choices: readonly Choice<T>[], usual: T) =>
      answerTo<T>({
        type: 'select',
        name: 'answer',
        message,
        choices: choices.map((each) => ({ name: nameOf(each), value: storedOf(each) })),
        default: usual,
        pageSize: 12,
      }),
    confirm: (message, usual) => answerTo<boolean>({ type: 'confirm', name: 'answer', message, default: usual }),
    decide: async (message) => {
      const text = await answerTo<string>({
        type: 'input',
        name: 'answer',
        message: `${message} (y or n)`,
        validate: (value: string) => (/^(y|yes|n|no|<)$/i.test(value.trim()) ? true : 'Type y or n.'),
      });
      if (text.trim() === '<') throw new GoBack();
      return /^y/i.test(text.trim());
    },
    tick: (message, items, usual) =>
      answerTo<readonly string[]>({
        type: 'checkbox',
        name: 'answer',
        message,
        choices: items.map((each) => ({ name: each, value: each, checked: usual.includes(each) })),
        pageSize: 12,
      }),
  };
}
