/**
 * Words set in lines of a figure's label, which the page does not break by itself; a longer word stays whole.
 * @param text words
 * @param charactersMax characters in a line
 */
export function wrappedLabel(text: string, charactersMax: number): readonly string[] {
  const lines: string[] = [];
  for (const word of text.split(/[ \t\n\r]+/).filter((each) => each !== '')) {
    const last = lines.at(-1);
    if (last !== undefined && [...last].length + 1 + [...word].length <= charactersMax)
      lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}
