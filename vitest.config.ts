import { defineConfig } from 'vitest/config';

// biome-ignore lint/style/noDefaultExport: the only form the tool reads
export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    globalSetup: ['tests/support/demo-site.ts'],
    // Tests make pictures and start browsers; more at once only wait for each other.
    maxWorkers: 2,
    testTimeout: 60_000,
    hookTimeout: 60_000,
  },
});
