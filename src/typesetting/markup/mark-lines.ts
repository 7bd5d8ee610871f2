/** The attribute by which a filled template still tells where in the template a tag stands; no tag may carry it itself. */
export const lineAttribute = 'template-line';

/**
 * Writes its own line into every tag of a template, so that a mistake is told where the author can correct it, however
 * often lists and conditions repeat or drop lines.
 * @param program the parsed template; its text is changed
 */
export function markLines(program: hbs.AST.Program): void {
  for (const statement of program.body) {
    if (statement.type === 'ContentStatement') {
      const content = statement as hbs.AST.ContentStatement;
      content.value = withLines(content.value, content.loc.start.line);
    } else if (statement.type === 'BlockStatement') {
      const { program: own, inverse } = statement as hbs.AST.BlockStatement;
      for (const each of [own, inverse]) if (each) markLines(each);
    }
  }
}

function withLines(text: string, first: number): string {
  return text
    .split('\n')
    .map((line, index) => line.replace(/<([a-z][a-z0-9-]*)/g, `<$1 ${lineAttribute}="${first + index}"`))
    .join('\n');
}
