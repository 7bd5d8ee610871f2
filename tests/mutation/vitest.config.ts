import { defineConfig } from 'vitest/config';

// Used by mutate-room.mjs inside its throw-away copy: the room's own tests are not run by vitest but collected by
// `collecting-vitest.ts` and run again for every change.
export default defineConfig({
  resolve: { alias: [{ find: /^vitest$/, replacement: `${import.meta.dirname}/collecting-vitest.ts` }] },
  test: {
    include: ['mutants/**/*.mutants.ts'],
    globals: true,
    maxWorkers: Number(process.env.KEYOUT_WORKERS ?? 2),
    testTimeout: 7_200_000,
    reporters: ['default'],
    silent: true,
  },
});
