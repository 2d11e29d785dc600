import { defineConfig } from 'vitest/config';
import { BaseSequencer, type TestSpecification } from 'vitest/node';

// Only what looks at the built demo waits for it to be built.
const SITE = 'tests/site/**/*.test.ts';
// These work on a disk, and start programs.
const RUNS = ['cli', 'desk', 'io', 'workspace'].map((folder) => `tests/${folder}/**/*.test.ts`);
// These change or measure what a process has but once: its user, its clock, its memory, or a file of ours by a stand-in.
const ALONE = [
  'tests/cli/build.test.ts',
  'tests/cli/hard-use.test.ts',
  'tests/cli/progress.test.ts',
  'tests/content/any-record.test.ts',
  'tests/io/film/make-film.test.ts',
  'tests/io/memory/damaged-memory.test.ts',
  'tests/io/memory/open-memory.test.ts',
  'tests/io/owned-files.test.ts',
  'tests/io/probe.test.ts',
  'tests/io/publish/lock.test.ts',
  'tests/pipeline/stranger-findings.test.ts',
];

const READY_PICTURES = 'tests/support/ready-pictures.ts';

/** Projects in the order in which they begin. A long file that came last would leave one of two processors idle. */
const ORDER = ['alone', 'site', 'runs', 'rooms'];

/** Long files first within a project, as the tool has it. A class, because the tool makes one of these itself. */
class InOrder extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const place = ({ project }: TestSpecification): number => ORDER.indexOf(project.name);
    return (await super.sort(files)).sort((a, b) => place(a) - place(b));
  }
}

// biome-ignore lint/style/noDefaultExport: the only form the tool reads
export default defineConfig({
  test: {
    // Tests make pictures and start browsers; more at once only wait for each other.
    maxWorkers: 2,
    sequence: { sequencer: InOrder },
    testTimeout: 60_000,
    hookTimeout: 60_000,
    // What a browser or a second program does comes late on a busy machine.
    expect: { poll: { timeout: 20_000 } },
    projects: [
      { extends: true, test: { name: 'alone', include: ALONE, globalSetup: [READY_PICTURES] } },
      {
        extends: true,
        // Words and language are read once for all files.
        test: {
          name: 'rooms',
          include: ['tests/**/*.test.ts'],
          exclude: [SITE, ...RUNS, ...ALONE],
          isolate: false,
        },
      },
      {
        extends: true,
        test: { name: 'runs', include: RUNS, exclude: ALONE, isolate: false, globalSetup: [READY_PICTURES] },
      },
      {
        extends: true,
        test: { name: 'site', include: [SITE], isolate: false, globalSetup: ['tests/support/demo-site.ts'] },
      },
    ],
  },
});
