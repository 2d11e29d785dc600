/**
 * How much there is to decode in an AVIF or a HEIC file. A picture may be put together from others, and name the same one
 * hundreds of times: a file of a thousand bytes then takes minutes, in a decoder that hears of no clock.
 */
import { boxesIn, boxNamed, type MediaBox } from './media-boxes.ts';

/** A box whose content begins with a version and flags, ISO/IEC 14496-12 section 4.2. */
const FULL_BOX = 4;

/** Reads numbers of a box one after another; nothing beyond its end. */
const numbersOf = (bytes: Buffer, { start, end }: MediaBox) => {
  let at = start;
  return {
    next: (length: 1 | 2 | 4): number => {
      if (at + length > end) throw new RangeError('A box ends within a number');
      at += length;
      return bytes.readUIntBE(at - length, length);
    },
  };
};

/** Pixels of each property that is a size (`ispe`, ISO/IEC 23008-12 section 6.5.3), by its number from 1. */
const sizesIn = (bytes: Buffer, { start, end }: MediaBox): ReadonlyMap<number, number> => {
  const sizes = new Map<number, number>();
  let index = 0;
  for (const box of boxesIn(bytes, start, end)) {
    index += 1;
    if (box.name !== 'ispe') continue;
    const { next } = numbersOf(bytes, { ...box, start: box.start + FULL_BOX });
    sizes.set(index, next(4) * next(4));
  }
  return sizes;
};

/** Pixels of each item, by the properties that are given to it (`ipma`, section 9.3). */
const pixelsOfItems = (bytes: Buffer, properties: MediaBox): ReadonlyMap<number, number> => {
  const pixels = new Map<number, number>();
  const container = boxNamed(bytes, 'ipco', properties.start, properties.end);
  const sizes = container ? sizesIn(bytes, container) : new Map<number, number>();
  for (const box of boxesIn(bytes, properties.start, properties.end)) {
    if (box.name !== 'ipma') continue;
    const { next } = numbersOf(bytes, box);
    const version = next(1);
    const isWide = ((next(1) << 16) | next(2)) & 1;
    for (let left = next(4); left > 0; left -= 1) {
      const item = next(version === 0 ? 2 : 4);
      for (let more = next(1); more > 0; more -= 1) {
        // The first bit says whether a reader has to know the property.
        const size = sizes.get(isWide ? next(2) & 0x7fff : next(1) & 0x7f);
        if (size !== undefined) pixels.set(item, Math.max(size, pixels.get(item) ?? 0));
      }
    }
  }
  return pixels;
};

/** Pixels of all pictures that others are put together from, each as often as it is named (`dimg`, section 8.12). */
const pixelsNamed = (bytes: Buffer, references: MediaBox, pixels: ReadonlyMap<number, number>): number => {
  const length = bytes.readUInt8(references.start) === 0 ? 2 : 4;
  let sum = 0;
  for (const box of boxesIn(bytes, references.start + FULL_BOX, references.end)) {
    if (box.name !== 'dimg') continue;
    const { next } = numbersOf(bytes, box);
    next(length);
    for (let left = next(2); left > 0; left -= 1) sum += pixels.get(next(length)) ?? 0;
  }
  return sum;
};

/** Pixels of the parts that the pictures of an AVIF or HEIC file are put together from; 0 where nothing says so. */
export const pixelsOfParts = (bytes: Buffer): number => {
  try {
    const meta = boxNamed(bytes, 'meta', 0, bytes.length);
    if (!meta) return 0;
    const inside = (name: string) => boxNamed(bytes, name, meta.start + FULL_BOX, meta.end);
    const [properties, references] = [inside('iprp'), inside('iref')];
    if (!properties || !references) return 0;
    return pixelsNamed(bytes, references, pixelsOfItems(bytes, properties));
  } catch (error) {
    // A decoder refuses such a file by itself.
    if (error instanceof RangeError) return 0;
    throw error;
  }
};
