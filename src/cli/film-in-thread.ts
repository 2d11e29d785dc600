/** A film made in a thread of its own, so that whoever works at the desk meanwhile waits for nothing. */
import { fileURLToPath } from 'node:url';
import { Worker } from 'node:worker_threads';
import type { FilmGround, FilmOutcome, FilmTools, KeyedFilm } from '../workspace/films.ts';
import { FILM_THREAD } from './thread-words.ts';

/** What the thread is given. */
export interface FilmOrder {
  readonly film: KeyedFilm;
  readonly ground: FilmGround;
}

/** What the thread says. */
export type FilmWord =
  | { readonly kind: 'frames'; readonly done: number; readonly total: number }
  | { readonly kind: 'keep'; readonly key: string; readonly bytes: Uint8Array }
  | { readonly kind: 'done'; readonly outcome: FilmOutcome };

const PROGRAM = fileURLToPath(new URL('./main.js', import.meta.url));

/** Does what `makeAndKeep` does, in a thread. */
export const makeFilmInThread = (
  film: KeyedFilm,
  ground: FilmGround,
  { made, onFilm, signal }: FilmTools,
): Promise<FilmOutcome> =>
  new Promise((resolve, reject) => {
    const order: FilmOrder = { film, ground };
    const worker = new Worker(PROGRAM, { argv: [FILM_THREAD], workerData: order });
    // The thread ends what it has started; a thread that is only taken away leaves its programs behind.
    const stop = (): void => worker.postMessage('stop');
    signal?.addEventListener('abort', stop);
    if (signal?.aborted) stop();
    let outcome: FilmOutcome = { diagnostics: [] };
    worker.on('message', (word: FilmWord) => {
      if (word.kind === 'frames') onFilm?.(film.cycle, word.done, word.total);
      if (word.kind === 'keep') made.keep(word.key, word.bytes);
      if (word.kind === 'done') outcome = word.outcome;
    });
    worker.on('error', reject);
    worker.on('exit', () => {
      signal?.removeEventListener('abort', stop);
      resolve(outcome);
    });
  });
