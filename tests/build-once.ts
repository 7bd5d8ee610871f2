import { execFileSync } from 'node:child_process';
import path from 'node:path';

/** Builds the program afresh before the first test, so that no test runs what an earlier build left; types are `npm run types`' to check. */
export function setup(): void {
  execFileSync(process.execPath, [path.resolve(import.meta.dirname, 'tools/build.mjs')], { stdio: 'inherit' });
}
