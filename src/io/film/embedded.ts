/** The encoder that needs nothing installed: WebAssembly in threads, a piece from cut to cut in each. */
import { createRequire } from 'node:module';
import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';
import { Worker } from 'node:worker_threads';
import type { FrameMaker } from './frames.ts';
import { filmFile, type Piece, piecesIn } from './mp4.ts';
import { bytesOfFrame } from './planes.ts';

/** From 0, the best, to 10: what a step more saves in time it costs in bytes. Measured. */
const SPEED = 7;
/** H.264's quantization parameter: the smaller, the finer and the larger. */
const QUALITY = 25;
/** What is added to it for a piece that took more than its share of the bytes, and how often that is tried. */
const COARSER = 5;
const COARSEST = 45;

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
  quality: number,
  onFrame: () => void,
): Promise<Uint8Array> => {
  const { width, height, rate } = film;
  const ask = (message: object, transfer: readonly ArrayBuffer[] = []): Promise<Answer> => {
    const answer = nextAnswer(worker);
    worker.postMessage(message, transfer as ArrayBuffer[]);
    return answer;
  };
  await ask({ begin: { width, height, rate, quality, frames: to - from } });
  const free: Uint8Array[] = [];
  let pending: Promise<Answer> | undefined;
  for (let frame = from; frame < to; frame += 1) {
    const bytes = free.pop() ?? new Uint8Array(bytesOfFrame(width, height));
    await film.make(frame, bytes);
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

/** A film as a file of at most `most` bytes. `onFrame` hears of each frame that is encoded, at most once for each. */
export const encodeEmbedded = async (
  film: FrameMaker,
  most: number,
  onFrame: () => void = () => {},
): Promise<Uint8Array> => {
  const encoder = createRequire(import.meta.url).resolve('h264-mp4-encoder');
  const program = fileURLToPath(new URL('./encode-piece.cjs', import.meta.url));
  const stretches = film.cuts.map((from, i): Stretch => ({ from, to: film.cuts[i + 1] ?? film.frames }));
  const pieces: Piece[] = new Array(stretches.length);
  let next = 0;
  let failed = false;
  const hand = async (): Promise<void> => {
    const worker = new Worker(program, { workerData: { encoder, speed: SPEED } });
    try {
      while (next < stretches.length && !failed) {
        const mine = next++;
        const stretch = stretches[mine] as Stretch;
        const share = (most * (stretch.to - stretch.from)) / film.frames;
        let quality = QUALITY;
        let file = await encodeStretch(worker, film, stretch, quality, onFrame);
        while (file.length > share && quality < COARSEST) {
          quality += COARSER;
          file = await encodeStretch(worker, film, stretch, quality, () => {});
        }
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
  return filmFile(pieces, film);
};
