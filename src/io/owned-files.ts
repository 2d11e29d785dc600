/**
 * The author's own files, changed by us: only within the content folder, only where they are as somebody has seen them,
 * and by one rename, so that a stop at any moment leaves the old file or the new one.
 */
import {
  closeSync,
  constants,
  copyFileSync,
  fsyncSync,
  linkSync,
  lstatSync,
  mkdirSync,
  openSync,
  readFileSync,
  realpathSync,
  renameSync,
  statSync,
  unlinkSync,
  writeSync,
} from 'node:fs';
import { basename, dirname, join, sep } from 'node:path';
import { codeOf } from '../text/error-code.ts';
import { sha256 } from '../text/hash.ts';
import { aside } from './unfinished.ts';

/** A file's bytes and their SHA-256. */
export interface FileState {
  readonly bytes: Uint8Array;
  readonly hash: string;
}

/** What became of a change: it is made, or the file is not as it was seen, or the place is none of ours. */
export type Written =
  | { readonly kind: 'written'; readonly hash: string | null }
  | { readonly kind: 'changed underneath'; readonly now: FileState | undefined }
  | { readonly kind: 'outside' };

/** A part of a path that is a name and nothing else; a hidden one is none of ours. */
const isName = (part: string): boolean =>
  // biome-ignore lint/suspicious/noControlCharactersInRegex: no name has them
  part !== '' && !part.startsWith('.') && !/[\\/:\0-\x1f]/.test(part);

/**
 * The absolute path of a file of a folder by its path in it, with forward slashes; undefined where that leads out of the
 * folder, also over a link. Its own folder has to be there, unless `makeFolder`.
 */
export const placeWithin = (folder: string, path: string, makeFolder = false): string | undefined => {
  const parts = path.split('/');
  if (!parts.every(isName)) return undefined;
  const full = join(folder, ...parts);
  try {
    const root = realpathSync(folder);
    if (makeFolder && parts.length > 1) {
      // The nearest folder that is there must be within, before one is made below it.
      let above = dirname(full);
      while (!lstatSync(above, { throwIfNoEntry: false })) above = dirname(above);
      if (!`${realpathSync(above)}${sep}`.startsWith(root + sep)) return undefined;
      mkdirSync(dirname(full), { recursive: true });
    }
    const parent = realpathSync(dirname(full));
    if (!`${parent}${sep}`.startsWith(root + sep)) return undefined;
    const found = lstatSync(full, { throwIfNoEntry: false });
    if (found?.isDirectory()) return undefined;
    if (found?.isSymbolicLink()) {
      // A link within the folder is followed; one to elsewhere is somebody else's file.
      const target = realpathSync(full);
      return target.startsWith(root + sep) ? target : undefined;
    }
    return join(parent, basename(full));
  } catch {
    return undefined;
  }
};

/** What stands in a file of a folder; undefined where there is none, or none of ours. */
export const stateOf = (folder: string, path: string): FileState | undefined => {
  const place = placeWithin(folder, path);
  if (place === undefined) return undefined;
  try {
    const bytes = readFileSync(place);
    return { bytes, hash: sha256(bytes) };
  } catch (error) {
    if (codeOf(error) === 'ENOENT') return undefined;
    throw error;
  }
};

/** Writes a whole file and sees that it is on the disk. */
export const writeWhole = (file: string, bytes: Uint8Array, mode = 0o666): void => {
  const open = openSync(file, 'wx', mode);
  try {
    for (let done = 0; done < bytes.length; ) done += writeSync(open, bytes, done);
    fsyncSync(open);
  } finally {
    closeSync(open);
  }
};

/** Sees that what was renamed in a folder is on the disk. Some systems open no folders, and need it less. */
export const syncFolder = (folder: string): void => {
  try {
    const open = openSync(folder, 'r');
    try {
      fsyncSync(open);
    } finally {
      closeSync(open);
    }
  } catch {
    // The rename itself is done.
  }
};

/** Puts a file that was written aside in a place where none may stand yet; throws EEXIST where one does. */
export const putNew = (written: string, place: string): void => {
  try {
    linkSync(written, place);
  } catch (error) {
    // A stick or a share may know no links. Copying may stop half way, and is the best that there is.
    if (!['EPERM', 'ENOTSUP', 'EOPNOTSUPP', 'ENOSYS', 'EMLINK'].includes(codeOf(error)))
      throw Object.assign(error as Error, { path: place });
    copyFileSync(written, place, constants.COPYFILE_EXCL);
  }
};

const discard = (file: string): void => {
  try {
    unlinkSync(file);
  } catch {
    // It is hidden, and the next listing passes it over.
  }
};

const hashOfFile = (file: string): string | undefined => {
  try {
    return sha256(readFileSync(file));
  } catch {
    return undefined;
  }
};

/**
 * Renames a file over one whose hash is `seen`; false where that one turned out to be another, and stands again. The old
 * file is held by a second name meanwhile, because a program that has it open, and has emptied it to write it anew, writes
 * into it also after another stands in its place.
 */
const renameOver = (written: string, place: string, seen: string): boolean => {
  const old = aside(place);
  try {
    linkSync(place, old);
  } catch {
    // On a disk without second names there is no looking back.
    renameSync(written, place);
    return true;
  }
  try {
    if (lstatSync(place).ino !== lstatSync(old).ino || hashOfFile(old) !== seen) return false;
    renameSync(written, place);
    if (hashOfFile(old) === seen) return true;
    renameSync(old, place);
    return false;
  } finally {
    discard(old);
  }
};

/**
 * Puts bytes in the place of a file that somebody has seen (`seen`: its hash, null where there was none); null bytes take
 * it away. Does nothing where the file is another by now.
 */
export const replaceSeen = (
  folder: string,
  path: string,
  seen: string | null,
  bytes: Uint8Array | null,
): Written => {
  const place = placeWithin(folder, path, seen === null);
  if (place === undefined) return { kind: 'outside' };
  const differs = (): FileState | undefined | false => {
    const now = stateOf(folder, path);
    return (now?.hash ?? null) === seen ? false : now;
  };
  const before = differs();
  if (before !== false) return { kind: 'changed underneath', now: before };
  if (bytes === null) {
    if (seen !== null) unlinkSync(place);
    syncFolder(dirname(place));
    return { kind: 'written', hash: null };
  }
  // No ending that a listing of records knows: it begins with a dot and is nobody's.
  const temporary = aside(place);
  const mode = seen === null ? 0o666 : statSync(place).mode & 0o7777;
  try {
    writeWhole(temporary, bytes, mode);
    // Seen once more right before, because writing took time.
    const now = differs();
    if (now !== false) return { kind: 'changed underneath', now };
    if (seen === null) putNew(temporary, place);
    else if (!renameOver(temporary, place, seen))
      return { kind: 'changed underneath', now: stateOf(folder, path) };
    syncFolder(dirname(place));
    return { kind: 'written', hash: sha256(bytes) };
  } catch (error) {
    if (codeOf(error) === 'EEXIST') return { kind: 'changed underneath', now: stateOf(folder, path) };
    throw error;
  } finally {
    discard(temporary);
  }
};
