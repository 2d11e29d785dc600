/** The list of a finished pack's entries, in a file beside it: opening a memory reads lists, not values. */
import { readFileSync, writeFileSync } from 'node:fs';
import { crc32 } from 'node:zlib';
import { KEY_BYTES, type PackEntry } from './pack.ts';

/** Key, offset (48 bits), length, checksum of the value. */
const ROW = KEY_BYTES + 6 + 4 + 4;

/** Size of the pack that the list is of, and the checksum of the whole list. */
const FOOT = 6 + 4;

const pathFor = (pack: string): string => `${pack}.list`;

/** Writes the list of a pack of `size` bytes. */
export const writePackIndex = (pack: string, entries: readonly PackEntry[], size: number): void => {
  const bytes = Buffer.alloc(entries.length * ROW + FOOT);
  entries.forEach(({ key, offset, length, checksum }, i) => {
    const at = i * ROW;
    bytes.write(key, at, KEY_BYTES, 'hex');
    bytes.writeUIntLE(offset, at + KEY_BYTES, 6);
    bytes.writeUInt32LE(length, at + KEY_BYTES + 6);
    bytes.writeUInt32LE(checksum, at + KEY_BYTES + 10);
  });
  const foot = entries.length * ROW;
  bytes.writeUIntLE(size, foot, 6);
  bytes.writeUInt32LE(crc32(bytes.subarray(0, foot + 6)), foot + 6);
  writeFileSync(pathFor(pack), bytes);
};

/** The list of a pack of `size` bytes; undefined where there is none, or it is damaged or of another pack. */
export const readPackIndex = (pack: string, size: number): readonly PackEntry[] | undefined => {
  let bytes: Buffer;
  try {
    bytes = readFileSync(pathFor(pack));
  } catch {
    return undefined;
  }
  const foot = bytes.length - FOOT;
  if (foot < 0 || foot % ROW !== 0) return undefined;
  if (bytes.readUIntLE(foot, 6) !== size) return undefined;
  if (crc32(bytes.subarray(0, foot + 6)) !== bytes.readUInt32LE(foot + 6)) return undefined;
  const keys = bytes.toString('hex', 0, foot);
  const entries = Array.from({ length: foot / ROW }, (_, i) => {
    const at = i * ROW;
    return {
      key: keys.slice(at * 2, (at + KEY_BYTES) * 2),
      offset: bytes.readUIntLE(at + KEY_BYTES, 6),
      length: bytes.readUInt32LE(at + KEY_BYTES + 6),
      checksum: bytes.readUInt32LE(at + KEY_BYTES + 10),
    };
  });
  return entries.every(({ offset, length }) => offset + length <= size) ? entries : undefined;
};
