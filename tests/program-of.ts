import path from 'node:path';
import { build } from 'rolldown';

const root = path.resolve(import.meta.dirname, '..');

/**
 * Makes one file that node can run of a test's own program, from the sources as they stand.
 * @param file the program, a path below the top of the project
 */
export async function programOf(file: string): Promise<string> {
  const made = path.join(root, 'reports/programs', `${path.basename(file, path.extname(file))}.js`);
  await build({
    input: path.join(root, file),
    platform: 'node',
    external: ['sharp'],
    output: { file: made, format: 'esm', codeSplitting: false },
  });
  return made;
}
