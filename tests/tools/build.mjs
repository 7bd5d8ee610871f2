import path from 'node:path';
import { build } from 'rolldown';

const root = path.resolve(import.meta.dirname, '../..');

// one bundle, split where a command loads what only it needs: half the processor time of as many files as src has
await build({
  input: path.join(root, 'src/main.ts'),
  platform: 'node',
  external: ['sharp'],
  output: {
    dir: path.join(root, 'dist'),
    cleanDir: true,
    format: 'esm',
    sourcemap: true,
    chunkFileNames: 'rooms/[name]-[hash].js',
  },
});
