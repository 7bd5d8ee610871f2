const wide =
  /[\u1100-\u115f\u2e80-\u303e\u3041-\ua4cf\uac00-\ud7a3\uf900-\ufaff\ufe30-\ufe6f\uff00-\uff60\uffe0-\uffe6]|\p{Emoji_Presentation}/u;
const nothing = /\p{Mn}|\p{Me}|\p{Cf}/u;

/**
 * The columns that a text takes on a terminal.
 * @param text one line
 */
export function displayColumns(text: string): number {
  let columns = 0;
  for (const character of text.normalize('NFC')) columns += nothing.test(character) ? 0 : wide.test(character) ? 2 : 1;
  return columns;
}

/**
 * A message with its long lines broken between words, each part under the first as far in; a word longer than a line stays whole.
 * @param text lines
 * @param columns of the terminal
 */
export function wrapLines(text: string, columns: number): string {
  return text
    .split('\n')
    .flatMap((line) => (displayColumns(line) <= columns ? [line] : wrapped(line, columns)))
    .join('\n');
}

function wrapped(line: string, columns: number): readonly string[] {
  const indent = /^ */.exec(line)?.[0] ?? '';
  const words = line.slice(indent.length).split(' ');
  const lines: string[] = [];
  let current = indent;
  for (const word of words) {
    const longer = current === indent ? `${indent}${word}` : `${current} ${word}`;
    if (current !== indent && displayColumns(longer) > columns) {
      lines.push(current.trimEnd());
      current = `${indent}${word}`;
    } else current = longer;
  }
  return [...lines, current.trimEnd()];
}
