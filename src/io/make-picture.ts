/** One photo → its published pictures. No metadata of any kind is carried over: only pixels go on. */
import sharp, { type Sharp } from 'sharp';
import type { PictureJob } from '../render/output.ts';
import { lazily } from '../text/lazy.ts';
import { cropWindow, partSize } from './crop-window.ts';
import { openPhoto, problemOf, SECONDS_TO_MAKE } from './open-photo.ts';
import { attentionIn } from './photo-attention.ts';
import { photoFailure } from './photo-problem.ts';
import { playMark } from './play-mark.ts';

/** What of a job decides its pixels, before it is marked and encoded. */
type JobPixels = Pick<PictureJob, 'width' | 'height' | 'focus'>;

interface Pixels {
  readonly data: Buffer;
  readonly width: number;
  readonly height: number;
  readonly channels: 3 | 4;
}

/**
 * Longest sides, in pixels, of the copies a picture may be made from: each is made from the one before, and a
 * picture from the smallest that is large enough. Fixed, so that a picture's bytes depend on its job alone and
 * not on which other pictures are made in the same run.
 */
export const COPIES = [4096, 2048, 1024];

const pipeline = ({ data, width, height, channels }: Pixels): Sharp =>
  sharp(data, { raw: { width, height, channels } });

const pixelsOf = async (image: Sharp): Promise<Pixels> => {
  const { data, info } = await image
    .toColourspace('srgb')
    .raw({ depth: 'uchar' })
    .toBuffer({ resolveWithObject: true });
  const { width, height, channels } = info;
  if (channels === 3 || channels === 4) return { data, width, height, channels };
  throw new Error(`A picture in sRGB has 3 or 4 channels, found ${channels}`);
};

const within = (image: Sharp, side: number): Sharp =>
  image.resize(side, side, { fit: 'inside', withoutEnlargement: true });

/** The pixels with a play mark over their middle. */
const withPlayMark = async (pixels: Pixels): Promise<Pixels> =>
  pixelsOf(pipeline(pixels).composite([{ input: Buffer.from(playMark(pixels.width, pixels.height)) }]));

/** How each format is written. Whoever changes it raises the recipe's version, so that no old picture passes for a new one. */
export const ENCODINGS = {
  jpeg: { mozjpeg: true, quality: 80 },
  // More effort takes twice the time (webp 4, avif 2), at most a twentieth fewer bytes, and .2 dB better at best.
  webp: { quality: 75, effort: 2 },
  avif: { quality: 50, effort: 1 },
  png: { compressionLevel: 9 },
} as const;

const encode = (image: Sharp, format: PictureJob['format']): Promise<Buffer> => {
  switch (format) {
    case 'jpeg':
      return image.flatten({ background: '#ffffff' }).jpeg(ENCODINGS.jpeg).toBuffer();
    case 'webp':
      return image.webp(ENCODINGS.webp).toBuffer();
    case 'avif':
      return image.avif(ENCODINGS.avif).toBuffer();
    case 'png':
      return image.png(ENCODINGS.png).toBuffer();
  }
};

/** Remembers the answer for each key, asking once. */
const once = <K, V>(make: (key: K) => Promise<V>): ((key: K) => Promise<V>) => {
  const known = new Map<K, Promise<V>>();
  return (key) => {
    const made = known.get(key) ?? make(key);
    known.set(key, made);
    return made;
  };
};

/**
 * Makes all pictures of one photo with one decode, and hands each to `done` with its bytes. A picture is as
 * large as its job says, or as large as the photo allows in that shape. Rejects with a `photoFailure` when the
 * photo cannot be decoded, though its probe said it can.
 */
export const makePictures = async (
  bytes: Uint8Array,
  jobs: readonly PictureJob[],
  done: (job: PictureJob, picture: Buffer) => Promise<void>,
): Promise<void> => {
  const source = jobs[0]?.source ?? '';
  const opened = await openPhoto(bytes, SECONDS_TO_MAKE);
  if ('problem' in opened) throw photoFailure(source, opened);
  const full = { width: opened.width, height: opened.height };

  const copy = once(async (index: number): Promise<Pixels> => {
    const side = COPIES[index] as number;
    if (index > 0) return pixelsOf(within(pipeline(await copy(index - 1)), side));
    return pixelsOf(within(opened.photo, side)).catch((error: unknown) => {
      throw photoFailure(source, problemOf(error));
    });
  });
  // Of the same copy whatever is made with it, so that every shape and every size is cropped by one map.
  const attention = lazily(async () => attentionIn(pipeline(await copy(COPIES.length - 1))));

  /** The smallest copy whose part is as large as the job wants. */
  const copyFor = async (job: JobPixels): Promise<Pixels> => {
    for (let index = COPIES.length - 1; index > 0; index--) {
      const candidate = await copy(index);
      const part = partSize(candidate, job.width / job.height);
      if (part.width >= job.width && part.height >= job.height) return candidate;
    }
    return copy(0);
  };

  const sized = once(async (key: string): Promise<Pixels> => {
    const job: JobPixels = JSON.parse(key);
    const ratio = job.width / job.height;
    const from = await copyFor(job);
    // A shape that differs by rounding alone is the photo's own: nothing to crop.
    const whole = Math.abs(full.width / ratio - full.height) <= Math.max(1, full.width / job.width);
    const { focus } = job;
    const part = whole
      ? { left: 0, top: 0, width: from.width, height: from.height }
      : cropWindow(from, ratio, focus ? { focus } : { attention: await attention() });
    const cropped = whole ? pipeline(from) : pipeline(from).extract(part);
    const scale = Math.min(1, part.width / job.width);
    return pixelsOf(
      cropped.resize(
        Math.max(1, Math.round(job.width * scale)),
        Math.max(1, Math.round(job.height * scale)),
        {
          fit: 'fill',
        },
      ),
    );
  });

  for (const job of jobs) {
    const { format, mark, width, height, focus } = job;
    const wanted: JobPixels = { width, height, ...(focus && { focus }) };
    const pixels = await sized(JSON.stringify(wanted));
    const marked = mark ? await withPlayMark(pixels) : pixels;
    await done(job, await encode(pipeline(marked), format));
  }
};
