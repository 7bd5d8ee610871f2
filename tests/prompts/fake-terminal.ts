import { PassThrough } from 'node:stream';
import { stripVTControlCharacters } from 'node:util';

const keys = {
  enter: '\r',
  backspace: '\u007f',
  space: ' ',
  down: '\u001b[B',
  up: '\u001b[A',
  escape: '\u001b',
} as const;

/** A terminal without a screen: keys go in as bytes, and what was drawn last can be read. */
export function fakeTerminal() {
  const input = Object.assign(new PassThrough(), { isTTY: true, setRawMode: () => input });
  const output = new PassThrough();
  // a prompt ends what it draws to when it is done; a terminal stays open
  output.end = () => output;
  let last = '';
  let drawn = 0;
  output.on('data', (data: Buffer) => {
    const text = stripVTControlCharacters(String(data));
    if (text.trim() === '') return;
    last = text;
    drawn += 1;
  });
  const settled = async () => {
    let before = -1;
    while (before !== drawn || drawn === 0) {
      before = drawn;
      await new Promise((resolve) => setTimeout(resolve, 12));
    }
  };
  return {
    terminal: { input, output },
    type: async (text: string) => {
      await settled();
      input.write(text);
      await settled();
    },
    keypress: async (key: keyof typeof keys) => {
      await settled();
      input.write(keys[key]);
      await settled();
    },
    /** waits until the screen shows a text, and says what it shows instead when it never does */
    shows: async (text: string) => {
      for (let turn = 0; turn < 400 && !last.includes(text); turn += 1)
        await new Promise((resolve) => setTimeout(resolve, 10));
      return last.includes(text) ? text : last;
    },
  };
}
