import { Problem } from '../problem.ts';
import { readMoney } from '../quantities/read-money.ts';

/** What is taken back of one line: all that is left, some of its quantity, or an amount. */
export type CreditedLine = { readonly number: number; readonly quantity?: string; readonly amountMinorUnits?: number };

/**
 * The lines named by `--line`: "2" (whole), "2:1.5" (of its quantity), "2:amount=12.50" (that much before tax).
 * @param texts what was typed
 * @param currency three-letter code of the invoice
 * @throws Problem when a text has another form
 */
export function readLineOptions(texts: readonly string[], currency: string): readonly CreditedLine[] {
  return texts.map((text) => {
    const match = /^(\d{1,4})(?::(?:(quantity|amount)=)?([\d.,]+))?$/.exec(text.trim());
    const [, number, kind, figure] = match ?? [];
    if (match === null || Number(number) === 0) throw wrong(text);
    if (figure === undefined) return { number: Number(number) };
    if (kind === 'amount') {
      const amountMinorUnits = readMoney(figure, currency);
      if (amountMinorUnits === null || amountMinorUnits === 0) throw wrong(text);
      return { number: Number(number), amountMinorUnits };
    }
    if (!/^\d{1,12}(\.\d{1,6})?$/.test(figure)) throw wrong(text);
    return { number: Number(number), quantity: figure };
  });
}

function wrong(text: string): Problem {
  return new Problem(
    `"${text}" names no line.`,
    'keyout credit --line',
    'Write "--line 2" for the whole line, "--line 2:1.5" for that much of its quantity, "--line 2:amount=12.50" for that much before tax.',
    2,
  );
}
