import type { z } from 'zod';
import { Problem } from '../problem.ts';

function fieldPath(path: readonly PropertyKey[]): string {
  return path.reduce<string>(
    (text, key) =>
      typeof key === 'number' ? `${text}[${key + 1}]` : text === '' ? String(key) : `${text}.${String(key)}`,
    '',
  );
}

function sentence(issue: z.core.$ZodIssue): string {
  if (issue.code === 'unrecognized_keys') return `has a field that does not belong here: ${issue.keys.join(', ')}`;
  if (issue.code === 'invalid_type' && issue.input === undefined) return 'is missing';
  return issue.message;
}

/**
 * What is wrong with a value for a record, each fault with its field in front; empty when nothing is.
 * @param schema one of the schemas in this room
 * @param value the value
 */
export function faultsOf(
  schema: z.ZodType,
  value: unknown,
): readonly { readonly field: string; readonly what: string }[] {
  const result = schema.safeParse(value, { reportInput: true });
  if (result.success) return [];
  return result.error.issues.map((issue) => ({
    field: fieldPath(issue.path) || 'the whole file',
    what: sentence(issue),
  }));
}

/**
 * A record read from a file's value, or a Problem that names every wrong field (list places count from 1).
 * @param schema one of the schemas in this room
 * @param value the parsed JSON
 * @param file the file's path, for the message
 * @throws Problem when a field is missing, wrong or unknown
 */
export function readRecord<Schema extends z.ZodType>(schema: Schema, value: unknown, file: string): z.output<Schema> {
  const result = schema.safeParse(value, { reportInput: true });
  if (result.success) return result.data;
  const issues = faultsOf(schema, value);
  const [only] = issues;
  throw new Problem(
    issues.length === 1
      ? `A field is wrong: ${only?.field} ${only?.what}.`
      : `${issues.length} fields are wrong: ${issues.map(({ field, what }) => `${field} ${what}`).join('; ')}.`,
    issues.length === 1 ? `${file}, ${only?.field}` : file,
    'Correct the field in the file, or run the interview again; `keyout schema` prints what each field may hold.',
  );
}
