/** The thread in which pictures are made: see pictures-in-thread.ts. */
import { parentPort, workerData } from 'node:worker_threads';
import { makeRemembered } from '../io/ensure-pictures.ts';
import { isPhotoFailure } from '../io/photo-problem.ts';
import type { PicturesOrder, PicturesWord } from './pictures-in-thread.ts';

/** Makes the pictures that the thread was begun for, and ends it. */
export const runPicturesThread = async (): Promise<void> => {
  const { ground, jobs }: PicturesOrder = workerData;
  const say = (word: PicturesWord): unknown => parentPort?.postMessage(word);
  try {
    await makeRemembered(ground, jobs, { keep: (key, bytes) => say({ kind: 'keep', key, bytes }) });
  } catch (error) {
    if (!isPhotoFailure(error)) throw error;
    const { source, problem, fix } = error;
    say({ kind: 'photo', source, problem: { problem, ...(fix !== undefined && { fix }) } });
  }
};
