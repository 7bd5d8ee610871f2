import Handlebars from 'handlebars';
import { Problem } from '../../problem.ts';
import { markLines } from './mark-lines.ts';

/**
 * Markup from a template and a view; every value is escaped, and every tag tells its line of the template.
 * @param template Handlebars text; `{{{` is not allowed
 * @param templateName for messages
 * @param partials named pieces of template
 * @param view strings, booleans and lists
 * @throws Problem naming the template and line
 */
export function fillTemplate(
  template: string,
  templateName: string,
  partials: Readonly<Record<string, string>>,
  view: object,
): string {
  const raw = template.split('\n').findIndex((line) => /\{\{\{|\{\{&/.test(line));
  if (raw >= 0)
    throw new Problem(
      'Values may not be printed unescaped.',
      `${templateName}, line ${raw + 1}`,
      'Write {{name}} with two braces.',
    );
  const handlebars = Handlebars.create();
  for (const [name, text] of Object.entries(partials)) handlebars.registerPartial(name, text);
  try {
    const program = Handlebars.parseWithoutProcessing(template);
    markLines(program);
    return handlebars.compile(program, { strict: true, preventIndent: true })(view);
  } catch (error) {
    const message = error instanceof Error ? error.message.split('\n')[0] : String(error);
    const line = /line (\d+)|(\d+):\d+$/i.exec(message ?? '');
    throw new Problem(
      `The template cannot be filled: ${message}.`,
      `${templateName}${line === null ? '' : `, line ${line[1] ?? line[2]}`}`,
      'Correct that place, or delete the copy to use the original template.',
    );
  }
}
