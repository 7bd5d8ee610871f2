#!/usr/bin/env node
import module from 'node:module';
import { runCommandLine } from './commands/run-command-line.ts';

(module as { enableCompileCache?: () => void }).enableCompileCache?.();
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE') process.exit(0);
  throw error;
});
process.exitCode = await runCommandLine(process.argv.slice(2));
