/**
 * A pack: many small values in one file. Each is written with its key, its length and its checksum, so that a pack which
 * a stopped run left unfinished can be read as far as it goes, and a damaged value is never taken for a sound one.
 */
import { closeSync, openSync, readSync } from 'node:fs';
import { crc32 } from 'node:zlib';

/** The first bytes of every pack. Another number when the layout changes: packs of another layout are passed over. */
export const PACK_HEAD = Buffer.from('lidlore pack 1\n', 'latin1');

/** Bytes of a key: 32 hexadecimal digits. */
export const KEY_BYTES = 16;

/** Key, length, checksum of the value, checksum of these three. */
const ENTRY_HEAD = KEY_BYTES + 4 + 4 + 4;

export interface PackEntry {
  readonly key: string;
  /** Where its value begins, in bytes from the start of the file. */
  readonly offset: number;
  readonly length: number;
  readonly checksum: number;
}

/** An entry as it is written: its head, then the value. */
export const packedEntry = (key: string, value: Uint8Array): readonly Uint8Array[] => {
  const head = Buffer.alloc(ENTRY_HEAD);
  head.write(key, 0, KEY_BYTES, 'hex');
  head.writeUInt32LE(value.length, KEY_BYTES);
  head.writeUInt32LE(crc32(value), KEY_BYTES + 4);
  head.writeUInt32LE(crc32(head.subarray(0, KEY_BYTES + 8)), KEY_BYTES + 8);
  return [head, value];
};

/** Bytes that an entry of such a value takes. */
export const entrySize = (length: number): number => ENTRY_HEAD + length;

/** Undefined where the file is shorter, or the disk refuses: a value that cannot be read is one that is not there. */
const readAt = (file: number, offset: number, length: number): Buffer | undefined => {
  const bytes = Buffer.allocUnsafe(length);
  let done = 0;
  try {
    while (done < length) {
      const read = readSync(file, bytes, done, length - done, offset + done);
      if (read === 0) return undefined;
      done += read;
    }
  } catch {
    return undefined;
  }
  return bytes;
};

/** Heads are read this many bytes at a time: packs of small values take few reads, large values are jumped over. */
const WINDOW = 65_536;

/** Every entry of an open pack, as far as it is sound. */
export const entriesIn = (file: number, size: number): readonly PackEntry[] => {
  const entries: PackEntry[] = [];
  const start = readAt(file, 0, Math.min(WINDOW, size));
  if (!start?.subarray(0, PACK_HEAD.length).equals(PACK_HEAD)) return entries;
  let [window, from] = [start, 0];
  let at = PACK_HEAD.length;
  while (at + ENTRY_HEAD <= size) {
    if (at + ENTRY_HEAD > from + window.length) {
      const next = readAt(file, at, Math.min(WINDOW, size - at));
      if (next === undefined) return entries;
      [window, from] = [next, at];
    }
    const head = window.subarray(at - from, at - from + ENTRY_HEAD);
    if (crc32(head.subarray(0, KEY_BYTES + 8)) !== head.readUInt32LE(KEY_BYTES + 8)) return entries;
    const length = head.readUInt32LE(KEY_BYTES);
    const offset = at + ENTRY_HEAD;
    if (offset + length > size) return entries;
    entries.push({
      key: head.toString('hex', 0, KEY_BYTES),
      offset,
      length,
      checksum: head.readUInt32LE(KEY_BYTES + 4),
    });
    at = offset + length;
  }
  return entries;
};

/** The value of an entry; undefined where its bytes are not those that were written. */
export const valueIn = (file: number, { offset, length, checksum }: PackEntry): Buffer | undefined => {
  const value = readAt(file, offset, length);
  return value !== undefined && crc32(value) === checksum ? value : undefined;
};

/** Opens a pack to be read; undefined where it is gone, as one is that another run has just put together with others. */
export const openPack = (path: string): number | undefined => {
  try {
    return openSync(path, 'r');
  } catch {
    return undefined;
  }
};

export const closePack = (file: number): void => closeSync(file);
