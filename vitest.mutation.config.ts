import { defineConfig } from 'vitest/config';

// The tests that judge a mutant: tables and goldens. The property tests stay out, they take a hundred times as long
// and what they alone would catch may count as survived.
export default defineConfig({
  test: {
    include: ['tests/evidence/**/*.test.ts', 'tests/electrics/**/*.test.ts'],
    exclude: ['tests/evidence/properties.test.ts'],
    testTimeout: 30_000,
  },
});
