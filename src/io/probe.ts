/** Looks at a photo once: size, colours, sharpness, whether it is whole. */
import { createHash } from 'node:crypto';
import sharp from 'sharp';
import type { PhotoSource } from '../content/sources.ts';
import { openPhoto, problemOf } from './open-photo.ts';
import type { PhotoProblem } from './photo-problem.ts';
import { SHARPNESS_SIDE, sharpnessOf } from './sharpness.ts';

/** Colours are taken from a copy of this many pixels a side: exact enough, and quick. */
const SAMPLE = 64;
/** Share of each side that counts as the picture's middle. */
const MIDDLE = 0.6;
/** Colours this close (levels a channel, of 256) count as one when looking for the dominant one. */
const BIN = 32;

type Rgb = readonly [number, number, number];

const hex = (colour: Rgb): string =>
  `#${colour.map((level) => Math.round(level).toString(16).padStart(2, '0')).join('')}`;

const mean = (colours: readonly Rgb[]): Rgb => {
  const sum = [0, 0, 0];
  for (const colour of colours)
    colour.forEach((level, i) => {
      sum[i] = (sum[i] as number) + level;
    });
  return sum.map((level) => level / colours.length) as unknown as Rgb;
};

/** Mean of the fullest bin of colours. */
const dominantOf = (colours: readonly Rgb[]): Rgb => {
  const bins = new Map<string, Rgb[]>();
  for (const colour of colours) {
    const key = colour.map((level) => Math.floor(level / BIN)).join();
    const bin = bins.get(key);
    if (bin) bin.push(colour);
    else bins.set(key, [colour]);
  }
  return mean([...bins.values()].reduce((fullest, bin) => (bin.length > fullest.length ? bin : fullest)));
};

const inMiddle = (at: number, length: number): boolean => Math.abs((at + 0.5) / length - 0.5) <= MIDDLE / 2;

/** A photo with its problem, in words that follow the file’s name. */
export const unusable = (path: string, hash: string, { problem, fix }: PhotoProblem): PhotoSource => ({
  path,
  hash,
  width: 0,
  height: 0,
  tint: '#808080',
  dominant: '#808080',
  problem,
  ...(fix !== undefined && { fix }),
});

/** A photo as the core sees it. Never rejects for what is in the file: that is its `problem`. */
export const probe = async (path: string, bytes: Uint8Array): Promise<PhotoSource> => {
  const hash = createHash('sha256').update(bytes).digest('hex');
  const opened = await openPhoto(bytes);
  if ('problem' in opened) return unusable(path, hash, opened);
  try {
    const copy = await opened.photo
      .resize(SHARPNESS_SIDE, SHARPNESS_SIDE, {
        fit: 'inside',
        withoutEnlargement: true,
        fastShrinkOnLoad: true,
      })
      .flatten({ background: '#ffffff' })
      .toColourspace('srgb')
      .raw({ depth: 'uchar' })
      .toBuffer({ resolveWithObject: true });
    // One decode serves both: a second would cost as much again.
    const again = () => sharp(copy.data, { raw: copy.info });
    const [grey, { data, info }] = await Promise.all([
      again().toColourspace('b-w').raw({ depth: 'uchar' }).toBuffer({ resolveWithObject: true }),
      again()
        .resize(SAMPLE, SAMPLE, { fit: 'inside', withoutEnlargement: true })
        .raw()
        .toBuffer({ resolveWithObject: true }),
    ]);
    const all: Rgb[] = [];
    const middle: Rgb[] = [];
    for (let y = 0; y < info.height; y++) {
      for (let x = 0; x < info.width; x++) {
        const at = (y * info.width + x) * info.channels;
        const level = (channel: number): number => data[at + Math.min(channel, info.channels - 1)] as number;
        const colour: Rgb = [level(0), level(1), level(2)];
        all.push(colour);
        if (inMiddle(x, info.width) && inMiddle(y, info.height)) middle.push(colour);
      }
    }
    return {
      path,
      hash,
      width: opened.width,
      height: opened.height,
      tint: hex(mean(all)),
      dominant: hex(dominantOf(middle.length > 0 ? middle : all)),
      sharpness: sharpnessOf({ data: grey.data, width: grey.info.width, height: grey.info.height }),
    };
  } catch (error) {
    return unusable(path, hash, problemOf(error));
  }
};
