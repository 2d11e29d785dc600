import { defineConfig } from 'vitest/config';

// Only what looks at the built demo waits for it to be built.
const SITE = 'tests/site/**/*.test.ts';

// biome-ignore lint/style/noDefaultExport: the only form the tool reads
export default defineConfig({
  test: {
    // Tests make pictures and start browsers; more at once only wait for each other.
    maxWorkers: 2,
    testTimeout: 60_000,
    hookTimeout: 60_000,
    projects: [
      { extends: true, test: { name: 'parts', include: ['tests/**/*.test.ts'], exclude: [SITE] } },
      {
        extends: true,
        test: { name: 'site', include: [SITE], globalSetup: ['tests/support/demo-site.ts'] },
      },
    ],
  },
});
