/** The encoder that needs nothing installed: WebAssembly in threads, a piece from cut to cut in each. */
import { createRequire } from 'node:module';
import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';
import { Worker } from 'node:worker_threads';
import type { FrameMaker } from './frames.ts';
import { filmFile, type Piece, piecesIn } from './mp4.ts';
import { bytesOfFrame, planesOver, soften } from './planes.ts';

/** From 0, the best, to 10: what a step more saves in time it costs in bytes. Measured. */
const SPEED = 7;
/**
 * H.264's quantization parameter: the smaller, the finer and the larger; 51 is its end. From 19 on a plain ground changes
 * its colour from one side to the other. Measured.
 */
const QUALITY = 17;
const COARSEST = 51;
/** Steps of it that are used, and by how many it halves the bytes: common practice, no source. */
const STEP = 3;
const HALVES = 6;
/** Pixels of the largest details that are taken away where nothing else makes a piece small enough. */
const SOFTEST = 64;
/** Of a film's bytes, what the pictures may take: the rest is for sound and tables. */
const PICTURES_SHARE = 0.98;

/** How finely a piece is encoded: `soft` is the size of the details that are taken away before, 1 for none. */
interface Fineness {
  readonly quality: number;
  readonly soft: number;
}

/** The next fineness to be tried for a piece that took so many times its share of the bytes; undefined at the end. */
const coarser = ({ quality, soft }: Fineness, times: number): Fineness | undefined => {
  if (quality < COARSEST) {
    const steps = Math.max(1, Math.ceil((Math.log2(times) * HALVES) / STEP));
    return { quality: Math.min(COARSEST, quality + steps * STEP), soft };
  }
  return soft < SOFTEST ? { quality, soft: soft * 2 } : undefined;
};

/** Threads at most: each holds some 60 MB. */
const MOST_THREADS = 4;
interface Stretch {
  readonly from: number;
  readonly to: number;
}

type Answer = { readonly ready: true } | { readonly frame: Uint8Array } | { readonly file: Uint8Array };

const nextAnswer = (worker: Worker): Promise<Answer> =>
  new Promise((resolve, reject) => {
    const settle = (done: () => void) => (): void => {
      worker.off('message', onMessage);
      worker.off('error', onError);
      worker.off('exit', onExit);
      done();
    };
    const onMessage = (answer: Answer): void => settle(() => resolve(answer))();
    const onError = (error: unknown): void => settle(() => reject(error))();
    const onExit = (): void => settle(() => reject(new Error('Expected the encoder to stay')))();
    worker.on('message', onMessage);
    worker.on('error', onError);
    worker.on('exit', onExit);
  });

const encodeStretch = async (
  worker: Worker,
  film: FrameMaker,
  { from, to }: Stretch,
  { quality, soft }: Fineness,
  onFrame: () => void,
  signal?: AbortSignal,
): Promise<Uint8Array> => {
  const { width, height, rate } = film;
  const ask = (message: object, transfer: readonly ArrayBuffer[] = []): Promise<Answer> => {
    const answer = nextAnswer(worker);
    // It is waited for later, and may fail before.
    answer.catch(() => {});
    worker.postMessage(message, transfer as ArrayBuffer[]);
    return answer;
  };
  await ask({ begin: { width, height, rate, quality, frames: to - from } });
  const free: Uint8Array[] = [];
  let pending: Promise<Answer> | undefined;
  for (let frame = from; frame < to; frame += 1) {
    signal?.throwIfAborted();
    const bytes = free.pop() ?? new Uint8Array(bytesOfFrame(width, height));
    await film.make(frame, bytes);
    if (soft > 1) soften(planesOver(bytes, width, height), soft);
    const before = pending && (await pending);
    if (before && 'frame' in before) free.push(before.frame);
    pending = ask({ frame: bytes }, [bytes.buffer as ArrayBuffer]);
    onFrame();
  }
  await pending;
  const done = await ask({ end: true });
  if (!('file' in done)) throw new Error('Expected the encoder to give a piece');
  return done.file;
};

/** A film, and how many of its shots had to lose their small details to fit. */
export interface EmbeddedFilm {
  readonly bytes: Uint8Array;
  readonly softened: number;
}

/**
 * A film as a file of at most `most` bytes; throws where no fineness makes it that small, the encoder fails, or
 * `signal` stops it. `onFrame`
 * hears of each frame that is encoded, at most once for each.
 */
export const encodeEmbedded = async (
  film: FrameMaker,
  most: number,
  onFrame: () => void = () => {},
  signal?: AbortSignal,
): Promise<EmbeddedFilm> => {
  const encoder = createRequire(import.meta.url).resolve('h264-mp4-encoder');
  const program = fileURLToPath(new URL('./encode-piece.cjs', import.meta.url));
  const stretches = film.cuts.map((from, i): Stretch => ({ from, to: film.cuts[i + 1] ?? film.frames }));
  const pieces: Piece[] = new Array(stretches.length);
  let next = 0;
  let softened = 0;
  let failed = false;
  const hand = async (): Promise<void> => {
    const worker = new Worker(program, { workerData: { encoder, speed: SPEED } });
    // Whoever waits for an answer hears of it too; without anybody it would end the whole run.
    worker.on('error', () => {});
    try {
      while (next < stretches.length && !failed) {
        const mine = next++;
        const stretch = stretches[mine] as Stretch;
        const share = (most * PICTURES_SHARE * (stretch.to - stretch.from)) / film.frames;
        let fineness: Fineness | undefined = { quality: QUALITY, soft: 1 };
        let file = await encodeStretch(worker, film, stretch, fineness, onFrame, signal);
        while (file.length > share) {
          fineness = coarser(fineness, file.length / share);
          if (!fineness) break;
          file = await encodeStretch(worker, film, stretch, fineness, () => {}, signal);
        }
        if (!fineness || fineness.soft > 1) softened += 1;
        pieces[mine] = piecesIn(file);
      }
    } catch (error) {
      failed = true;
      throw error;
    } finally {
      await worker.terminate();
    }
  };
  const threads = Math.min(availableParallelism(), MOST_THREADS, stretches.length);
  const hands = await Promise.allSettled(Array.from({ length: threads }, hand));
  const wrong = hands.find((one) => one.status === 'rejected');
  if (wrong) throw wrong.reason;
  const bytes = filmFile(pieces, film);
  if (bytes.length > most) throw new Error(`Expected a film of at most ${most} bytes, found ${bytes.length}`);
  return { bytes, softened };
};
