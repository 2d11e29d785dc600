/** HEIC, which sharp does not read → pixels, by libheif compiled to WebAssembly. */

/** A decoded photo: its pixels as RGBA, eight bits each. */
export interface HeicPixels {
  readonly width: number;
  readonly height: number;
  /** RGBA, 8 bits a channel; absent when there are more pixels than asked for. */
  readonly data?: Buffer;
}

/** The decoder prints its complaints; standard output is not its to write on. */
const quietly = async <T>(work: () => Promise<T>): Promise<T> => {
  const { log, warn, error } = console;
  const nothing = (): void => {};
  Object.assign(console, { log: nothing, warn: nothing, error: nothing });
  try {
    return await work();
  } finally {
    Object.assign(console, { log, warn, error });
  }
};

const decode = async (bytes: Uint8Array, mostPixels: number): Promise<HeicPixels | undefined> => {
  const { default: decodeHeic } = await import('heic-decode');
  const images = await decodeHeic.all({ buffer: bytes });
  try {
    const first = images[0];
    if (!first) return undefined;
    const { width, height } = first;
    if (width * height > mostPixels) return { width, height };
    const { data } = await first.decode();
    return { width, height, data: Buffer.from(data.buffer, data.byteOffset, data.byteLength) };
  } finally {
    images.dispose();
  }
};

/** One after another: the decoder blocks while it works, so nothing is lost, and `quietly` must not overlap. */
let last: Promise<unknown> = Promise.resolve();

/** Decodes the first picture, turned as the camera was held; undefined when there is none. Rejects when it is damaged. */
export const decodeHeic = (bytes: Uint8Array, mostPixels: number): Promise<HeicPixels | undefined> => {
  const mine = last.then(() => quietly(() => decode(bytes, mostPixels)));
  last = mine.catch(() => {});
  return mine;
};
