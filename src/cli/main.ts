#!/usr/bin/env node
import { run } from './run.ts';
import { FILM_THREAD, PICTURES_THREAD } from './thread-words.ts';

// `lidlore … | head` closes the pipe when it has read enough: that is no fault of anybody's.
for (const stream of [process.stdout, process.stderr])
  stream.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code !== 'EPIPE') throw error;
  });

const runCommand = (): Promise<number> =>
  run(process.argv.slice(2), {
    // Opened only by the command that reads it.
    get stdin() {
      return process.stdin;
    },
    stdout: process.stdout,
    stderr: process.stderr,
    cwd: process.cwd(),
    env: process.env,
    isTTY: process.stderr.isTTY === true,
    columns: process.stdout.columns,
    // Standard input takes time to open, and most commands never ask.
    dialogue: async () =>
      process.stdin.isTTY === true && process.stderr.isTTY === true
        ? (await import('./dialogue.ts')).openDialogue(process.stdin, process.stderr)
        : undefined,
  });

const threads: ReadonlyMap<string, () => Promise<void>> = new Map([
  [FILM_THREAD, async () => (await import('./film-thread.ts')).runFilmThread()],
  [PICTURES_THREAD, async () => (await import('./pictures-thread.ts')).runPicturesThread()],
]);

// The program is bundled into CommonJS, where nothing can be awaited outside a function.
const begin = async (): Promise<void> => {
  const runThread = threads.get(process.argv[2] ?? '');
  // Only who was begun so asks whether it is a thread, because what knows it takes time to load.
  if (runThread && !(await import('node:worker_threads')).isMainThread) return runThread();
  process.exitCode = await runCommand();
};

void begin();
