/** Lists a folder with what tells a changed file from an unchanged one. Nothing but the file system's own calls: this is all that a build of unchanged content waits for. */
import { type Dirent, readdirSync, realpathSync, type Stats, statSync } from 'node:fs';
import { join } from 'node:path';

/** A file and the state in which it was found. */
export interface ListedFile {
  /** Relative to the folder, with forward slashes. */
  readonly path: string;
  /** Size, times of the last change of the content and of the file's entry, and its number on the disk. */
  readonly stamp: string;
  /** When the content was last changed, in milliseconds since 1970. */
  readonly changed: number;
  /** Bytes. */
  readonly size: number;
}

/**
 * A file that was changed less than this many milliseconds before it was read may be changed again without another
 * stamp, on disks whose clock is coarse.
 */
const TOO_FRESH = 50;

/** Whether a file that was read at a moment (milliseconds since 1970) has to be read again the next time, whatever its stamp says. */
export const isTooFresh = ({ changed }: ListedFile, readAt: number): boolean => changed > readAt - TOO_FRESH;

const listInto = (dir: string, prefix: string, above: readonly string[], files: ListedFile[]): void => {
  let entries: readonly Dirent[];
  let here = '';
  try {
    here = realpathSync(dir);
    // A link that leads back to a folder we are in would never end.
    if (above.includes(here)) return;
    entries = readdirSync(dir, { withFileTypes: true });
  } catch (error) {
    // What was there a moment ago may be gone; the folder itself must be there.
    if (prefix === '') throw error;
    return;
  }
  for (const entry of entries) {
    if (entry.name.startsWith('.')) continue;
    const full = join(dir, entry.name);
    if (entry.isDirectory()) {
      listInto(full, `${prefix}${entry.name}/`, [...above, here], files);
      continue;
    }
    const found = statSync(full, { throwIfNoEntry: false });
    if (found?.isDirectory()) listInto(full, `${prefix}${entry.name}/`, [...above, here], files);
    else if (found?.isFile()) files.push(listed(prefix + entry.name, found));
  }
};

const listed = (path: string, { size, mtimeMs, ctimeMs, ino }: Stats): ListedFile => ({
  path,
  stamp: `${size} ${mtimeMs} ${ctimeMs} ${ino}`,
  changed: mtimeMs,
  size,
});

/** One file below `dir` as `listFiles` lists it; undefined where there is none, or something else. */
export const listFile = (dir: string, path: string): ListedFile | undefined => {
  if (path.split('/').some((name) => name.startsWith('.'))) return undefined;
  const found = statSync(join(dir, path), { throwIfNoEntry: false });
  return found?.isFile() ? listed(path, found) : undefined;
};

/**
 * Every file below `dir`, links followed, sorted by path; nothing whose name begins with a dot. Throws where the folder
 * cannot be read.
 */
export const listFiles = (dir: string): readonly ListedFile[] => {
  const files: ListedFile[] = [];
  listInto(dir, '', [], files);
  return files.sort((a, b) => (a.path < b.path ? -1 : 1));
};

/** Every file of a folder that need not be there. */
export const listedIfThere = (dir: string): readonly ListedFile[] => {
  try {
    return listFiles(dir);
  } catch {
    return [];
  }
};
