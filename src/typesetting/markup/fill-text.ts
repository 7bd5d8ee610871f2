import Handlebars from 'handlebars';
import { Problem } from '../../problem.ts';

/**
 * Plain text from a template and a view; values are set as they are, for text has no markup that they could break.
 * @param template Handlebars text
 * @param templateName for messages
 * @param view strings, booleans and lists
 * @throws Problem naming the template
 */
export function fillText(template: string, templateName: string, view: object): string {
  try {
    return Handlebars.create().compile(template, { strict: true, noEscape: true })(view);
  } catch (error) {
    throw new Problem(
      `The template cannot be filled: ${error instanceof Error ? error.message.split('\n')[0] : String(error)}.`,
      templateName,
      'Correct that place, or delete the copy to use the original template.',
    );
  }
}
