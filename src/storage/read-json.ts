import { readFileSync } from 'node:fs';
import { Problem } from '../problem.ts';
import { fileProblem } from './file-problem.ts';

/**
 * The value of a JSON file.
 * @param file the path
 * @throws Problem when the file cannot be read, or with line and column where it is not JSON
 */
export function readJson(file: string): unknown {
  let text: string;
  try {
    text = readFileSync(file, 'utf8').replace(/^\uFEFF/, '');
  } catch (error) {
    throw fileProblem(error, file);
  }
  try {
    return JSON.parse(text);
  } catch (error) {
    const message = error instanceof Error ? error.message : '';
    const place = Number(/position (\d+)/.exec(message)?.[1] ?? unexpectedPlace(text));
    const before = text.slice(0, place).split('\n');
    const where = `${file}, line ${before.length}, column ${(before.at(-1)?.length ?? 0) + 1}`;
    throw new Problem(
      'The file is not valid JSON.',
      where,
      'Look at the character before that place: often a comma too many or a quote too few.',
    );
  }
}

function hasUnexpectedToken(text: string): boolean {
  try {
    JSON.parse(text);
    return false;
  } catch (error) {
    return error instanceof Error && error.message.startsWith('Unexpected token');
  }
}

// The parser names no place for an unexpected sign; the shortest beginning that holds the sign ends with it.
function unexpectedPlace(text: string): number {
  if (!hasUnexpectedToken(text)) return text.length;
  let sound = 0;
  let broken = text.length;
  while (broken - sound > 1) {
    const middle = Math.floor((sound + broken) / 2);
    if (hasUnexpectedToken(text.slice(0, middle))) broken = middle;
    else sound = middle;
  }
  return broken - 1;
}
