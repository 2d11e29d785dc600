/** HEIC, which sharp does not read → pixels, by libheif compiled to WebAssembly. */
import { createRequire } from 'node:module';
import { fileURLToPath } from 'node:url';
import { Worker } from 'node:worker_threads';

/** A decoded photo: its pixels as RGBA, eight bits each. */
export interface HeicPixels {
  readonly width: number;
  readonly height: number;
  /** RGBA, 8 bits a channel; absent when there are more pixels than asked for. */
  readonly data?: Buffer;
}

/** What is let through: so many pixels, within so many seconds. */
interface Bounds {
  readonly mostPixels: number;
  readonly seconds: number;
}

type Answer =
  | { readonly problem: string }
  | { readonly pixels: (Omit<HeicPixels, 'data'> & { readonly data?: Uint8ClampedArray }) | undefined };

/** What the thread says; `undefined` where the time is over. Rejects where the thread ends without a word. */
const answerOf = (worker: Worker, seconds: number): Promise<Answer | undefined> =>
  new Promise((resolve, reject) => {
    const clock = setTimeout(() => resolve(undefined), seconds * 1000);
    worker.on('message', resolve);
    worker.on('error', reject);
    worker.on('exit', () => {
      clearTimeout(clock);
      reject(new Error('Expected the decoder to answer'));
    });
  });

const decode = async (
  bytes: Uint8Array,
  { mostPixels, seconds }: Bounds,
): Promise<HeicPixels | undefined | 'too slow'> => {
  const decoder = createRequire(import.meta.url).resolve('heic-decode');
  const program = fileURLToPath(new URL('./decode-heic-thread.cjs', import.meta.url));
  // The decoder prints its complaints; standard output is not its to write on.
  const quiet = { stdout: true, stderr: true };
  const worker = new Worker(program, { workerData: { decoder, bytes, mostPixels }, ...quiet });
  try {
    const answer = await answerOf(worker, seconds);
    if (!answer) return 'too slow';
    if ('problem' in answer) throw new Error(answer.problem);
    const { pixels } = answer;
    if (!pixels) return undefined;
    const { data, ...size } = pixels;
    return data ? { ...size, data: Buffer.from(data.buffer, data.byteOffset, data.byteLength) } : size;
  } finally {
    await worker.terminate();
  }
};

/** One after another: the pixels of a large photo take half a gigabyte while they are decoded. */
let last: Promise<unknown> = Promise.resolve();

/**
 * Decodes the first picture, turned as the camera was held; undefined when there is none, and "too slow" when it takes more
 * than the seconds that it is given. Rejects when it is damaged.
 */
export const decodeHeic = (
  bytes: Uint8Array,
  bounds: Bounds,
): Promise<HeicPixels | undefined | 'too slow'> => {
  const mine = last.then(() => decode(bytes, bounds));
  last = mine.catch(() => {});
  return mine;
};
