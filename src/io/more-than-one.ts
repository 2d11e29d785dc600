/** Whether a file has more than one picture, of which a page could show only one and would not say so. Nothing is decoded. */
import type { PhotoKind } from './photo-kind.ts';
import type { PhotoProblem } from './photo-problem.ts';

const SAVE_ONE = 'Save the one that is to be seen as a JPEG or a PNG, and name that';

export const MOVES: PhotoProblem = { problem: 'is a moving picture, where a still is wanted', fix: SAVE_ONE };

const HAS_PAGES: PhotoProblem = { problem: 'has several pages, where one picture is wanted', fix: SAVE_ONE };

/** GIF89a, sections 18 to 27: whether there is a second image descriptor. */
const gifMoves = (bytes: Buffer): boolean => {
  const tableAfter = (flags: number): number => (flags & 0x80 ? 3 * 2 ** ((flags & 7) + 1) : 0);
  let at = 13 + tableAfter(bytes[10] ?? 0);
  let images = 0;
  while (at < bytes.length) {
    const block = bytes[at];
    if (block === 0x2c) {
      images += 1;
      if (images > 1) return true;
      at += 11 + tableAfter(bytes[at + 9] ?? 0);
    } else if (block === 0x21) at += 2;
    else return false;
    // Data comes in pieces of up to 255 bytes, of which the last has none.
    while (at < bytes.length && bytes[at] !== 0) at += 1 + (bytes[at] as number);
    at += 1;
  }
  return false;
};

/** RFC 9649, section 2.7: whether the file says that it moves, and has a second frame. */
const webpMoves = (bytes: Buffer): boolean => {
  if (bytes.toString('latin1', 12, 16) !== 'VP8X' || !((bytes[20] ?? 0) & 2)) return false;
  let frames = 0;
  for (let at = 12; at + 8 <= bytes.length; ) {
    if (bytes.toString('latin1', at, at + 4) === 'ANMF') frames += 1;
    const size = bytes.readUInt32LE(at + 4);
    at += 8 + size + (size & 1);
  }
  return frames > 1;
};

/** PNG, third edition, section 11.3.6: whether `acTL` stands before the picture and counts more than one frame. */
const pngMoves = (bytes: Buffer): boolean => {
  for (let at = 8; at + 12 <= bytes.length; ) {
    const name = bytes.toString('latin1', at + 4, at + 8);
    if (name === 'IDAT') return false;
    if (name === 'acTL') return bytes.readUInt32BE(at + 8) > 1;
    at += 12 + bytes.readUInt32BE(at);
  }
  return false;
};

/** Directories of a TIFF that are looked at: a photo has itself, and small copies of itself. */
const MOST_DIRECTORIES = 64;

/** TIFF 6.0, section 2 and tag 254; BigTIFF as libtiff describes it: whether there is a second page that is no smaller copy of the first. */
const tiffHasPages = (bytes: Buffer): boolean => {
  const isLittle = bytes[0] === 0x49;
  const isBig = bytes[isLittle ? 2 : 3] === 0x2b;
  const number = (at: number, length: 2 | 4 | 8): number => {
    if (at + length > bytes.length) throw new RangeError('A directory lies beyond the end');
    if (length === 8) return Number(isLittle ? bytes.readBigUInt64LE(at) : bytes.readBigUInt64BE(at));
    return isLittle ? bytes.readUIntLE(at, length) : bytes.readUIntBE(at, length);
  };
  const [word, count, entry] = isBig ? ([8, 8, 20] as const) : ([4, 2, 12] as const);
  /** Bit 0 of NewSubfileType says that it is a smaller copy, bit 2 that it is a mask. */
  const isPage = (first: number, entries: number): boolean => {
    for (let at = first; at < first + entries * entry; at += entry)
      if (number(at, 2) === 254) return (number(at + 4 + word, 4) & 5) === 0;
    return true;
  };
  let pages = 0;
  let at = number(isBig ? 8 : 4, word);
  const seen = new Set<number>();
  // One that leads back to an earlier one would never end.
  while (at !== 0 && !seen.has(at)) {
    if (seen.size === MOST_DIRECTORIES) return true;
    seen.add(at);
    const entries = number(at, count);
    const first = at + count;
    if (isPage(first, Math.min(entries, 4096))) pages += 1;
    if (pages > 1) return true;
    at = number(first + entries * entry, word);
  }
  return false;
};

/** What a file of more than one picture is; undefined for a still, and for what its decoder will find damaged. */
export const moreThanOne = (bytes: Buffer, kind: PhotoKind): PhotoProblem | undefined => {
  try {
    switch (kind) {
      case 'GIF':
        return gifMoves(bytes) ? MOVES : undefined;
      case 'WebP':
        return webpMoves(bytes) ? MOVES : undefined;
      case 'PNG':
        return pngMoves(bytes) ? MOVES : undefined;
      case 'TIFF':
        return tiffHasPages(bytes) ? HAS_PAGES : undefined;
      default:
        return undefined;
    }
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
};
