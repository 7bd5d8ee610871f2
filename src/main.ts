#!/usr/bin/env node
import module from 'node:module';
import { nodeIsTooOld } from './node-version.ts';

process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE') process.exit(0);
  throw error;
});
const tooOld = nodeIsTooOld(process.versions.node);
if (tooOld === null) {
  // nothing else is read before: an older Node would stop at it, and a newer one keeps what it compiles
  (module as { enableCompileCache?: () => void }).enableCompileCache?.();
  // the program is one bundle: a stack for --debug names the sources
  if (process.argv.includes('--debug')) process.setSourceMapsEnabled(true);
  const { runCommandLine } = await import('./commands/run-command-line.ts');
  process.exitCode = await runCommandLine(process.argv.slice(2));
} else {
  process.stderr.write(`${tooOld}\n`);
  process.exitCode = 1;
}
