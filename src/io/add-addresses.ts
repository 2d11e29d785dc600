/**
 * Adds to the list of addresses in the content folder. Only to its end, so whatever stands in it, and however a
 * spreadsheet saved it, stays byte for byte.
 */
import { open, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { codeOf } from '../text/error-code.ts';
import { utf8Bytes } from '../text/utf8.ts';
import { ADDRESSES_FILE, type Added } from './addresses-file.ts';
import { checksum } from './checksum.ts';
import { decodeAsWritten, encodingOf } from './decode-text.ts';
import { disk, type FileSystem } from './publish/file-system.ts';
import { type Holder, lock } from './publish/lock.ts';
import { realFolder } from './publish/real-folder.ts';

/** The calls to the disk, so that a test can let any of them fail. */
export interface ListDisk {
  /** Undefined where no file is there. */
  readonly read: (path: string) => Promise<Uint8Array | undefined>;
  /** Adds to the end of a file, which is made where it is absent. Adds all of it or rejects. */
  readonly append: (path: string, bytes: Uint8Array) => Promise<void>;
}

const listDisk: ListDisk = {
  read: async (path) => {
    try {
      return await readFile(path);
    } catch (error) {
      if (codeOf(error) === 'ENOENT') return undefined;
      throw error;
    }
  },
  append: async (path, bytes) => {
    const file = await open(path, 'a');
    try {
      const { size } = await file.stat();
      try {
        // In one call: a run that is killed has added all or nothing, but for a line that the next one completes.
        const { bytesWritten } = await file.write(bytes);
        if (bytesWritten < bytes.length)
          throw Object.assign(new Error('ENOSPC: no space left on device, write'), { code: 'ENOSPC' });
        await file.sync();
      } catch (error) {
        await file.truncate(size).catch(() => undefined);
        throw error;
      }
    } finally {
      await file.close();
    }
  },
};

/** A text in the encoding of the file that it is added to. What an old encoding of Windows lacks is written with `%`. */
const encoded = (text: string, file: Uint8Array): Uint8Array => {
  const encoding = encodingOf(file);
  if (encoding === 'utf-16le') return Buffer.from(text, encoding);
  if (encoding === 'utf-16be') return Buffer.from(text, 'utf-16le').swap16();
  return utf8Bytes(encoding === 'utf-8' ? text : text.replace(/[^\0-\x7f]+/g, encodeURIComponent));
};

export interface AddOptions {
  /** The public folder that was published: whoever holds it may add. */
  readonly site: string;
  /** Told once where another run holds it. */
  readonly onWait?: (holder: Holder, dir: string) => void;
  readonly fs?: FileSystem;
  readonly list?: ListDisk;
}

/**
 * Adds what `toAdd` makes of the file's text, as it was written and empty where there is none, to the list of a content
 * folder; nothing where that is empty. One run at a time: two that publish at once add each line once. Rejects with the
 * system's error where the disk refuses, and leaves the file as it was.
 */
export const addAddresses = async (
  content: string,
  toAdd: (text: string) => string,
  { site, onWait, fs = disk, list = listDisk }: AddOptions,
): Promise<Added> => {
  const path = join(content, ADDRESSES_FILE);
  const dir = await realFolder(site, fs);
  const held = await lock(fs, dir, { wait: true, onWait: (holder) => onWait?.(holder, dir) });
  try {
    const before = (await list.read(path)) ?? new Uint8Array();
    const added = encoded(toAdd(decodeAsWritten(before)), before);
    if (added.length > 0) await list.append(path, added);
    return { from: checksum(before), to: checksum(Buffer.concat([before, added])) };
  } finally {
    await held?.release();
  }
};
