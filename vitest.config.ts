import { defineConfig } from 'vitest/config';

// biome-ignore lint/style/noDefaultExport: the only form the tool reads
export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    // Tests make pictures and start browsers; more at once only wait for each other.
    maxWorkers: 2,
    testTimeout: 60_000,
    hookTimeout: 60_000,
  },
});
