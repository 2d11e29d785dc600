/** The thread in which a film is made: see film-in-thread.ts. */
import { parentPort, workerData } from 'node:worker_threads';
import { makeAndKeep } from '../workspace/films.ts';
import type { FilmOrder, FilmWord } from './film-in-thread.ts';

/** Makes the film that the thread was begun for, and ends it. */
export const runFilmThread = async (): Promise<void> => {
  const { film, ground }: FilmOrder = workerData;
  const say = (word: FilmWord): unknown => parentPort?.postMessage(word);
  const controller = new AbortController();
  parentPort?.on('message', () => controller.abort());
  const outcome = await makeAndKeep(film, ground, {
    made: {
      recall: () => undefined,
      has: () => false,
      keep: (key, bytes) => say({ kind: 'keep', key, bytes }),
      forgetOthers: () => undefined,
    },
    signal: controller.signal,
    onFilm: (_, done, total) => say({ kind: 'frames', done, total }),
  });
  say({ kind: 'done', outcome });
  parentPort?.close();
};
