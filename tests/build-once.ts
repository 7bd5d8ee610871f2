import { execFileSync } from 'node:child_process';
import { rmSync } from 'node:fs';
import path from 'node:path';

const root = path.resolve(import.meta.dirname, '..');

/** Builds the program afresh before the first test, so that no test runs what an earlier build left; types are `npm run types`' to check. */
export function setup(): void {
  rmSync(path.join(root, 'dist'), { recursive: true, force: true });
  execFileSync(
    process.execPath,
    [path.join(root, 'node_modules/typescript/bin/tsc'), '-p', 'src/tsconfig.json', '--noCheck'],
    {
      cwd: root,
      stdio: 'inherit',
    },
  );
}
