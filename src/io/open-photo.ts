/** Any photo a phone writes → a sharp pipeline. */
import sharp, { type Sharp, type SharpOptions } from 'sharp';
import { isCutShort } from './is-cut-short.ts';

// AVIF bytes change with the number of threads; two photos at once keep the processors busy instead.
sharp.concurrency(1);
sharp.cache(false);

/** The largest phone sensors have 200 million pixels; more than that is a mistake or an attack. */
export const MOST_PIXELS = 200_000_000;

const inputOptions: SharpOptions = { failOn: 'warning', limitInputPixels: MOST_PIXELS };

/** Brands of HEVC-coded pictures, ISO/IEC 23008-12 annex B. */
const heicBrands = ['heic', 'heix', 'heim', 'heis', 'hevc', 'hevx'];

const isHeic = (bytes: Uint8Array): boolean => {
  const head = Buffer.from(bytes.subarray(0, 64)).toString('latin1');
  if (head.slice(4, 8) !== 'ftyp') return false;
  const brands = head.slice(8, Math.min(64, Buffer.from(bytes.subarray(0, 4)).readUInt32BE(0)));
  return heicBrands.some((brand) => brands.includes(brand));
};

/** A photo that can be decoded, or what is wrong with it in words that follow the file's name. */
export type Opened =
  | { readonly photo: Sharp; readonly width: number; readonly height: number }
  | { readonly problem: string };

const tooMany = (width: number, height: number): Opened => ({
  problem: `has too many pixels (${width} × ${height})`,
});

const UNREADABLE: Opened = { problem: 'is not a picture that can be read' };

const TAKEN = 'JPEG, PNG, WebP, AVIF, HEIC, TIFF and GIF are';

/** How files of the formats begin that are taken, byte by byte in Latin-1; their own specifications. */
const PHOTOS =
  /^(?:\xff\xd8\xff|\x89PNG\r\n|GIF8[79]a|RIFF[\s\S]{4}WEBP|[\s\S]{4}ftyp|II\x2a\0|MM\0\x2a|II\x2b\0|MM\0\x2b)/;
/** What is no photograph though it may bear its name: a drawing takes as long to render as its author likes. */
const OTHERS: readonly (readonly [RegExp, string])[] = [
  [/^%PDF/, 'a PDF'],
  [/^\s*(?:\xef\xbb\xbf)?\s*<(?:\?xml|!DOCTYPE|!--|svg)/i, 'a drawing (SVG)'],
  [/^(?:[\s\S]\x45\xdf\xa3|[\s\S]{4}ftyp(?:isom|iso\d|mp4\d|M4V |qt {2}|avc1))/, 'a film'],
];

/** What a file is by its first bytes, where it is no photograph. */
const otherThing = (bytes: Uint8Array): Opened | undefined => {
  const head = Buffer.from(bytes.subarray(0, 256)).toString('latin1');
  const other = OTHERS.find(([begins]) => begins.test(head));
  if (other) return { problem: `is ${other[1]}, which is not taken: ${TAKEN}` };
  return PHOTOS.test(head) ? undefined : UNREADABLE;
};

const openHeic = async (bytes: Uint8Array): Promise<Opened> => {
  const { decodeHeic } = await import('./decode-heic.ts');
  const pixels = await decodeHeic(bytes, MOST_PIXELS);
  if (!pixels) return UNREADABLE;
  const { width, height, data } = pixels;
  if (!data) return tooMany(width, height);
  return { photo: sharp(data, { raw: { width, height, channels: 4 } }), width, height };
};

/** Opens a photo's bytes; width and height in pixels, the camera's orientation applied. */
export const openPhoto = async (bytes: Uint8Array): Promise<Opened> => {
  if (bytes.length === 0) return { problem: 'has no pixels: the file is empty' };
  const other = otherThing(bytes);
  if (other) return other;
  if (isCutShort(bytes)) return { problem: 'is cut short' };
  try {
    if (isHeic(bytes)) return await openHeic(bytes);
    const { autoOrient } = await sharp(bytes, { ...inputOptions, limitInputPixels: false }).metadata();
    const { width, height } = autoOrient;
    if (!width || !height) return { problem: 'has no pixels' };
    if (width * height > MOST_PIXELS) return tooMany(width, height);
    return { photo: sharp(bytes, inputOptions).autoOrient(), width, height };
  } catch (error) {
    return { problem: problemOf(error) };
  }
};

/** What a decoder's complaint means to the photo's owner. */
export const problemOf = (error: unknown): string => {
  const message = error instanceof Error ? error.message : String(error);
  if (/premature|truncat|end of (file|stream|input|image|data)|not enough|short|read error/i.test(message))
    return 'is cut short';
  if (/unsupported image format|not a HEIC|not found/i.test(message))
    return 'is not a picture that can be read';
  return 'is damaged and cannot be read to its end';
};
