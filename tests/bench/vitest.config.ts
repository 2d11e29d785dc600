import { defineConfig } from 'vitest/config';

// Measurements print figures and assert nothing of time: machines differ.
// biome-ignore lint/style/noDefaultExport: the only form the tool reads
export default defineConfig({
  test: {
    include: ['tests/bench/**/*.bench.ts'],
    maxWorkers: 1,
    testTimeout: 900_000,
    hookTimeout: 900_000,
    disableConsoleIntercept: true,
  },
});
