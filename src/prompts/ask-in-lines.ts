import { createInterface } from 'node:readline';
import { type Ask, type Choice, GoBack, nameOf, storedOf } from './question.ts';

/** What is needed to ask: where lines come from and where they go. */
export type LineTerminal = { readonly input: NodeJS.ReadableStream; readonly output: NodeJS.WritableStream };

/** The choice meant by a number of the list or by the beginning of a name; null when none or several are. */
function chosen<T extends string>(text: string, choices: readonly Choice<T>[]): Choice<T> | null {
  if (/^\d+$/.test(text) && choices[Number(text) - 1] !== undefined && !choices.some((each) => nameOf(each) === text))
    return choices[Number(text) - 1] ?? null;
  const found = choices.filter((each) => nameOf(each).toLowerCase().startsWith(text.toLowerCase()));
  const exact = found.find((each) => nameOf(each).toLowerCase() === text.toLowerCase());
  return exact ?? (found.length === 1 ? (found[0] ?? null) : null);
}

function readLine({ input, output }: LineTerminal, words: string): Promise<string> {
  const reader = createInterface({ input, output, terminal: false });
  output.write(`${words} `);
  return new Promise((resolve, reject) => {
    let done = false;
    reader.once('line', (line) => {
      done = true;
      reader.close();
      resolve(line.trim());
    });
    reader.once('close', () => {
      if (!done) reject(Object.assign(new Error('stopped'), { name: 'ExitPromptError' }));
    });
  });
}

/**
 * Questions one plain line each, never repainted: for terminals that cannot move the cursor, and for screen readers.
 * Lists are numbered; "<" goes back to the prompt before.
 * @param terminal where lines come from and go to
 */
export function askInLines(terminal: LineTerminal): Ask {
  const ask = async <T>(words: string, read: (text: string) => T | string | null): Promise<T> => {
    for (;;) {
      const text = await readLine(terminal, words);
      if (text === '<') throw new GoBack();
      const value = read(text);
      if (value !== null && typeof value === 'object' && 'answer' in value) return value;
      terminal.output.write(`  ${value ?? 'That is not understood.'}\n`);
    }
  };
  const list = (choices: readonly string[]) => choices.map((each, index) => `  ${index + 1} ${each}\n`).join('');
  const yesNo = async (words: string, usual: boolean | null): Promise<boolean> => {
    const said = await ask<{ answer: boolean }>(words, (text) => {
      if (text === '' && usual !== null) return { answer: usual };
      return /^(y|yes)$/i.test(text) ? { answer: true } : /^(n|no)$/i.test(text) ? { answer: false } : 'Type y or n.';
    });
    return said.answer;
  };
  return {
    text: async (message, usual, check) => {
      const said = await ask<{ answer: string }>(`${message}${usual === '' ? '' : ` [${usual}]`}:`, (text) => {
        const meant = text === '' ? usual : usual !== '' && text === '-' ? '' : text;
        const wrong = check?.(meant) ?? null;
        return wrong ?? { answer: meant };
      });
      return said.answer;
    },
    choose: async <T extends string>(message: string, choices: readonly Choice<T>[], usual: T) => {
      terminal.output.write(`${message}\n${list(choices.map(nameOf))}`);
      const shown = choices.find((each) => storedOf(each) === usual);
      const said = await ask<{ answer: T }>(`Which${shown === undefined ? '' : ` [${nameOf(shown)}]`}:`, (text) => {
        const choice = text === '' ? (shown ?? null) : chosen(text, choices);
        return choice === null ? 'Type its number, or how it begins.' : { answer: storedOf(choice) };
      });
      return said.answer;
    },
    confirm: (message, usual) => yesNo(`${message} [${usual ? 'y' : 'n'}]:`, usual),
    decide: (message) => yesNo(`${message} (y or n):`, null),
    tick: async (message, items, usual) => {
      terminal.output.write(`${message}\n${list(items)}`);
      const offered = usual.length === 0 ? 'none' : usual.join(', ');
      const said = await ask<{ answer: readonly string[] }>(`Numbers, "all" or "none" [${offered}]:`, (text) => {
        if (text === '') return { answer: usual };
        if (text === 'all') return { answer: items };
        if (text === 'none') return { answer: [] };
        const numbers = text.split(/[\s,]+/).map(Number);
        if (numbers.some((each) => items[each - 1] === undefined)) return `Type numbers from 1 to ${items.length}.`;
        return { answer: items.filter((_, index) => numbers.includes(index + 1)) };
      });
      return said.answer;
    },
  };
}
