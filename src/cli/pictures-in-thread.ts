/**
 * Pictures made in a thread of its own. The runtime looks through all that a thread holds each time that some photos'
 * pixels have come and gone: beside a whole box that takes a fifth of the time, and here there is next to nothing.
 */
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { type MakePictures, makeRemembered } from '../io/ensure-pictures.ts';
import { type PhotoProblem, photoFailure } from '../io/photo-problem.ts';
import { PICTURES_THREAD } from './thread-words.ts';

/** What the thread is given. */
export interface PicturesOrder {
  readonly ground: Parameters<MakePictures>[0];
  readonly jobs: Parameters<MakePictures>[1];
}

/** What the thread says. */
export type PicturesWord =
  | { readonly kind: 'keep'; readonly key: string; readonly bytes: Uint8Array }
  | { readonly kind: 'photo'; readonly source: string; readonly problem: PhotoProblem };

/** Pictures of photos. Fewer, and drawings of words alone, are made sooner without a thread. */
const WORTH_A_THREAD = 12;

const PROGRAM = fileURLToPath(new URL('./main.js', import.meta.url));

/** Does what `makeRemembered` does, in a thread of `program` where there is enough to do. */
export const picturesInThread =
  (program = PROGRAM): MakePictures =>
  async (ground, jobs, memory, onProgress) => {
    const ofPhotos = jobs.filter((job) => 'source' in job).length;
    // Uncompiled, the program has no file that a thread could begin with.
    if (ofPhotos < WORTH_A_THREAD || !existsSync(program))
      return makeRemembered(ground, jobs, memory, onProgress);
    // Every build that has something to do loads this file, and few begin a thread.
    const { Worker } = await import('node:worker_threads');
    return new Promise((resolve, reject) => {
      const order: PicturesOrder = { ground, jobs };
      const worker = new Worker(program, { argv: [PICTURES_THREAD], workerData: order });
      let done = 0;
      worker.on('message', (word: PicturesWord) => {
        if (word.kind === 'photo') return reject(photoFailure(word.source, word.problem));
        memory.keep(word.key, word.bytes);
        done += 1;
        onProgress?.(done, jobs.length);
      });
      worker.on('error', reject);
      worker.on('exit', () => {
        if (done === jobs.length) resolve();
        else reject(new Error(`Expected ${jobs.length} pictures of the thread, found ${done}`));
      });
    });
  };
