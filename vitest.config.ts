import { defineConfig } from 'vitest/config';

// Only what looks at the built demo waits for it to be built.
const SITE = 'tests/site/**/*.test.ts';
// These change what a process has but once: its user, its clock, its memory, or a file of ours by a stand-in.
const ALONE = [
  ...['cli', 'desk', 'io', 'workspace'].map((folder) => `tests/${folder}/**/*.test.ts`),
  'tests/content/any-record.test.ts',
  'tests/pipeline/stranger-findings.test.ts',
];

// biome-ignore lint/style/noDefaultExport: the only form the tool reads
export default defineConfig({
  test: {
    // Tests make pictures and start browsers; more at once only wait for each other.
    maxWorkers: 2,
    testTimeout: 60_000,
    hookTimeout: 60_000,
    // What a browser or a second program does comes late on a busy machine.
    expect: { poll: { timeout: 20_000 } },
    projects: [
      {
        extends: true,
        // Words and language are read once for all files.
        test: { name: 'rooms', include: ['tests/**/*.test.ts'], exclude: [SITE, ...ALONE], isolate: false },
      },
      {
        extends: true,
        test: { name: 'runs', include: ALONE, globalSetup: ['tests/support/ready-pictures.ts'] },
      },
      {
        extends: true,
        test: { name: 'site', include: [SITE], globalSetup: ['tests/support/demo-site.ts'] },
      },
    ],
  },
});
