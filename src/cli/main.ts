#!/usr/bin/env node
import { isMainThread } from 'node:worker_threads';
import { run } from './run.ts';

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
    ...(process.stdin.isTTY === true &&
      process.stderr.isTTY === true && {
        dialogue: async () => (await import('./dialogue.ts')).openDialogue(process.stdin, process.stderr),
      }),
  });

// The program is bundled into CommonJS, where nothing can be awaited outside a function.
if (isMainThread)
  void runCommand().then((code) => {
    process.exitCode = code;
  });
// A thread of the program has one work alone.
else void import('./film-thread.ts').then(({ runFilmThread }) => runFilmThread());
