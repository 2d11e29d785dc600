/** Any photo a phone writes → a sharp pipeline. */
import sharp, { type Metadata, type Sharp, type SharpOptions } from 'sharp';
import { isCutShort } from './is-cut-short.ts';
import { pixelsOfParts } from './parts-of-heif.ts';
import { photoKind } from './photo-kind.ts';
import { type PhotoProblem, TOO_SLOW } from './photo-problem.ts';

// AVIF bytes change with the number of threads; two photos at once keep the processors busy instead.
sharp.concurrency(1);
sharp.cache(false);

/** The largest phone sensors have 200 million pixels; more than that is a mistake or an attack. */
const MOST_PIXELS = 200_000_000;

/** Where a decoder has to hold the whole picture: 64 million pixels then take half a gigabyte. Measured. */
const MOST_HELD = 64_000_000;

/** The decoder of AVIF holds a picture three times, and hears of no clock. Measured. */
const MOST_OF_AVIF = 32_000_000;

/** A picture is put together from parts no larger than itself; as much again is left for small copies and masks. */
const PARTS_OF_PICTURE = 2;

/** Seconds for a look at one photo: some ten times what the largest takes that is let through. */
const SECONDS_TO_LOOK = 60;
/** Making a picture decodes the same photo in more detail, and nobody wants to hear of it after the look went well. */
export const SECONDS_TO_MAKE = 600;

const inputOptions: SharpOptions = { failOn: 'warning', limitInputPixels: MOST_PIXELS };

/** A photo that can be decoded, or what is wrong with it in words that follow the file's name. */
export type Opened =
  | { readonly photo: Sharp; readonly width: number; readonly height: number }
  | PhotoProblem;

const tooMany = (width: number, height: number, most: number): PhotoProblem => ({
  problem: `has too many pixels (${width} × ${height}), expected at most ${Math.round(most / 1e6)} million in a file of its kind`,
  fix: 'Save it again at half its width, or as a JPEG',
});

/** Pixels that are let through: by what the decoder holds of them at once. */
const mostPixels = ({ format, isProgressive, depth }: Metadata): number => {
  if (format === 'heif') return MOST_OF_AVIF;
  const isInRows = !isProgressive && (format === 'jpeg' || format === 'png' || format === 'tiff');
  const most = isInRows ? MOST_PIXELS : MOST_HELD;
  return depth === 'uchar' ? most : most / 2;
};

const openHeic = async (bytes: Uint8Array, seconds: number): Promise<Opened> => {
  const { decodeHeic } = await import('./decode-heic.ts');
  const pixels = await decodeHeic(bytes, { mostPixels: MOST_HELD, seconds });
  if (pixels === 'too slow') return TOO_SLOW;
  if (!pixels) return { problem: 'is not a picture that can be read' };
  const { width, height, data } = pixels;
  if (!data) return tooMany(width, height, MOST_HELD);
  return { photo: sharp(data, { raw: { width, height, channels: 4 } }), width, height };
};

/**
 * Opens a photo's bytes; width and height in pixels, the camera's orientation applied. Whoever decodes it is stopped after
 * so many seconds.
 */
export const openPhoto = async (bytes: Uint8Array, seconds = SECONDS_TO_LOOK): Promise<Opened> => {
  if (bytes.length === 0) return { problem: 'has no pixels: the file is empty' };
  const kind = photoKind(bytes);
  if (typeof kind !== 'string') return kind;
  if (isCutShort(bytes)) return { problem: 'is cut short' };
  try {
    const parts =
      kind === 'AVIF' || kind === 'HEIC'
        ? pixelsOfParts(Buffer.from(bytes.buffer, bytes.byteOffset, bytes.length))
        : 0;
    if (parts > PARTS_OF_PICTURE * (kind === 'AVIF' ? MOST_OF_AVIF : MOST_HELD))
      return { problem: 'is put together from more than can be read', fix: 'Save it again as a JPEG' };
    if (kind === 'HEIC') return await openHeic(bytes, seconds);
    const metadata = await sharp(bytes, { ...inputOptions, limitInputPixels: false }).metadata();
    const { width, height } = metadata.autoOrient;
    if (!width || !height) return { problem: 'has no pixels' };
    const most = mostPixels(metadata);
    if (width * height > most) return tooMany(width, height, most);
    return { photo: sharp(bytes, inputOptions).autoOrient().timeout({ seconds }), width, height };
  } catch (error) {
    return problemOf(error);
  }
};

/** What a decoder's complaint means to the photo's owner. */
export const problemOf = (error: unknown): PhotoProblem => {
  const message = error instanceof Error ? error.message : String(error);
  if (/^timeout/i.test(message)) return TOO_SLOW;
  if (/premature|truncat|end of (file|stream|input|image|data)|not enough|short|read error/i.test(message))
    return { problem: 'is cut short' };
  if (/unsupported image format|not a HEIC|not found/i.test(message))
    return { problem: 'is not a picture that can be read' };
  return { problem: 'is damaged and cannot be read to its end' };
};
