/**
 * Pieces of one film that were not encoded equally finely: each way of encoding has a picture parameter set of its own, and
 * they are told apart by their numbers (ITU-T H.264, 7.3.2.2 and 7.3.3). A film has all of them in one place in front,
 * because not every player takes new ones on the way.
 */
import type { Piece } from './mp4.ts';

/** Kinds of units (H.264, table 7-1) that say which picture parameter set they mean: slices. */
const SLICES = new Set([1, 5]);
/** Bytes of the length before each unit. */
const LENGTH = 4;
/**
 * Numbers from 15 to 30 are written in 9 bits where 0 takes one (Exp-Golomb, H.264, 9.1): eight more, so that all bits
 * behind them keep their places in their bytes.
 */
const FIRST_NUMBER = 15;
const MOST_NUMBERS = 16;

/** A unit without the bytes that keep it from looking like the start of another (H.264, 7.4.1). */
const unescaped = (unit: Uint8Array): Uint8Array => {
  const bytes = new Uint8Array(unit.length);
  let length = 0;
  let zeros = 0;
  for (const byte of unit) {
    if (zeros >= 2 && byte === 3) {
      zeros = 0;
      continue;
    }
    bytes[length++] = byte;
    zeros = byte === 0 ? zeros + 1 : 0;
  }
  return bytes.subarray(0, length);
};

const escaped = (bytes: Uint8Array): Uint8Array => {
  const unit = new Uint8Array(Math.ceil(bytes.length * 1.5) + 1);
  let length = 0;
  let zeros = 0;
  for (const byte of bytes) {
    if (zeros >= 2 && byte <= 3) {
      unit[length++] = 3;
      zeros = 0;
    }
    unit[length++] = byte;
    zeros = byte === 0 ? zeros + 1 : 0;
  }
  return unit.slice(0, length);
};

const bitAt = (bytes: Uint8Array, at: number): number => ((bytes[at >> 3] ?? 0) >> (7 - (at & 7))) & 1;

/** Where an Exp-Golomb number ends that begins at a bit. */
const afterNumber = (bytes: Uint8Array, at: number): number => {
  let zeros = 0;
  while (bitAt(bytes, at + zeros) === 0 && at + zeros < bytes.length * 8) zeros += 1;
  return at + 2 * zeros + 1;
};

/** A unit in which the number 0 at a bit is another one. */
const renumbered = (unit: Uint8Array, bitOf: (bytes: Uint8Array) => number, number: number): Uint8Array => {
  const old = unescaped(unit);
  const at = bitOf(old);
  if (bitAt(old, at) !== 1) throw new Error('Expected an encoded piece to have one picture parameter set');
  const byte = at >> 3;
  const bytes = new Uint8Array(old.length + 1);
  bytes.set(old.subarray(0, byte));
  bytes.set(old.subarray(byte), byte + 1);
  // The bits before stay, the number takes nine, and the bits behind it are already where they belong.
  const before = at & 7;
  const keptBefore = ((old[byte] ?? 0) >> (8 - before)) << (16 - before);
  const keptBehind = (old[byte] ?? 0) & (0xff >> (before + 1));
  const both = keptBefore | ((number + 1) << (7 - before)) | keptBehind;
  bytes[byte] = both >> 8;
  bytes[byte + 1] = both & 0xff;
  return escaped(bytes);
};

const AFTER_HEADER = 8;

const renumberedPicture = (picture: Uint8Array, number: number): Uint8Array => {
  const look = new DataView(picture.buffer, picture.byteOffset, picture.byteLength);
  const units: Uint8Array[] = [];
  for (let at = 0; at + LENGTH < picture.length; ) {
    const length = look.getUint32(at);
    const unit = picture.subarray(at + LENGTH, at + LENGTH + length);
    at += LENGTH + length;
    const isSlice = SLICES.has((unit[0] ?? 0) & 31);
    // In a slice two numbers stand before it: its first block, and its type.
    const told = isSlice
      ? renumbered(unit, (bytes) => afterNumber(bytes, afterNumber(bytes, AFTER_HEADER)), number)
      : unit;
    const before = Buffer.alloc(LENGTH);
    before.writeUInt32BE(told.length);
    units.push(before, told);
  }
  return Buffer.concat(units);
};

interface Sets {
  /** All up to the picture parameter sets. */
  readonly front: Uint8Array;
  readonly picture: Uint8Array;
}

/** The content of `avcC` with one set of each kind (ISO/IEC 14496-15, 5.3.3.1). */
const setsIn = (settings: Uint8Array): Sets => {
  const look = new DataView(settings.buffer, settings.byteOffset, settings.byteLength);
  const end = 8 + look.getUint16(6);
  const isPlain = ((settings[4] ?? 0) & 3) === LENGTH - 1 && ((settings[5] ?? 0) & 31) === 1;
  if (!isPlain || settings[end] !== 1) throw new Error('Expected avcC with one set of each kind');
  const picture = settings.subarray(end + 3, end + 3 + look.getUint16(end + 1));
  return { front: settings.subarray(0, end), picture };
};

const isSame = (a: Uint8Array, b: Uint8Array): boolean => Buffer.compare(a, b) === 0;

/** Pieces under the same settings, whatever fineness each was encoded with. Throws where they differ in more than that. */
export const underOneSetting = (pieces: readonly Piece[]): readonly Piece[] => {
  const [first] = pieces;
  if (!first || pieces.every(({ settings }) => isSame(settings, first.settings))) return pieces;
  const all = pieces.map(({ settings }) => setsIn(settings));
  const { front } = setsIn(first.settings);
  if (!all.every((one) => isSame(one.front, front)))
    throw new Error('Expected all pieces of a film to be of one size and profile');
  const distinct: Uint8Array[] = [];
  const places = all.map(({ picture }) => {
    const known = distinct.findIndex((one) => isSame(one, picture));
    return known >= 0 ? known : distinct.push(picture) - 1;
  });
  if (distinct.length > MOST_NUMBERS)
    throw new Error(`Expected at most ${MOST_NUMBERS} ways of encoding in a film`);
  const numbered = distinct.map((picture, i) => renumbered(picture, () => AFTER_HEADER, FIRST_NUMBER + i));
  const settings = Buffer.concat([
    front,
    Uint8Array.of(numbered.length),
    ...numbered.flatMap((set) => [Uint8Array.of(set.length >> 8, set.length & 0xff), set]),
  ]);
  return pieces.map(({ pictures }, i) => ({
    settings,
    pictures: pictures.map((picture) => renumberedPicture(picture, FIRST_NUMBER + (places[i] ?? 0))),
  }));
};
