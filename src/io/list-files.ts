/** Lists a folder with what tells a changed file from an unchanged one. Nothing but the file system's own calls: this is all that a build of unchanged content waits for. */
import { type Dirent, lstatSync, readdirSync, realpathSync, type Stats, statSync } from 'node:fs';
import { isAbsolute, join, relative, sep } from 'node:path';

/** The stamp of what has no content: a link to nothing, a socket. */
const BROKEN = 'broken';
/** The stamp of a link that leads out of the folder. */
const OUTSIDE = 'outside';

/** Whether what was listed has no content that could be read. */
export const isBroken = ({ stamp }: Pick<ListedFile, 'stamp'>): boolean => stamp === BROKEN;

/** Whether what was listed is a link that leads out of the folder: nothing behind it is looked at. */
export const leadsOut = ({ stamp }: Pick<ListedFile, 'stamp'>): boolean => stamp === OUTSIDE;

/** Whether what was listed has content that may be read. */
export const hasContent = (file: Pick<ListedFile, 'stamp'>): boolean => !isBroken(file) && !leadsOut(file);

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

/** What is listed besides whole files whose names do not begin with a dot. */
export interface Listing {
  /** Names that begin with a dot and are listed all the same. */
  readonly isListed?: (name: string) => boolean;
  /** Lists also what is broken. */
  readonly withBroken?: boolean;
  /** Follows no link that leads out of the folder, and lists the link in place of what it leads to. */
  readonly staysInside?: boolean;
}

/** Records that a dot hides from whoever looks for them, and nothing else that has one. */
const HIDDEN_RECORD = /^\.(?![_#]).*\.(?:md|markdown)$/i;

/** How a content folder is listed: nothing that its owner may have meant to be read is left out. */
export const CONTENT: Listing = {
  isListed: (name) => HIDDEN_RECORD.test(name),
  withBroken: true,
  staysInside: true,
};

const isHidden = (name: string, { isListed }: Listing): boolean =>
  name.startsWith('.') && !(isListed?.(name) ?? false);

/** Whether a path that exists leads to something that is neither the folder, by its real path, nor below it. */
const isOutside = (full: string, root: string): boolean => {
  const way = relative(root, realpathSync(full));
  return way === '..' || way.startsWith(`..${sep}`) || isAbsolute(way);
};

/** The real path behind a link; the link's own where what it leads to has gone since. */
const realIfThere = (path: string): string => {
  try {
    return realpathSync(path);
  } catch {
    return path;
  }
};

const listInto = (
  dir: string,
  prefix: string,
  /** The real path of `dir`. */
  here: string,
  above: readonly string[],
  files: ListedFile[],
  listing: Listing,
): void => {
  // A link that leads back to a folder we are in would never end.
  if (above.includes(here)) return;
  let entries: readonly Dirent[];
  try {
    entries = readdirSync(dir, { withFileTypes: true });
  } catch (error) {
    // What was there a moment ago may be gone; the folder itself must be there.
    if (prefix === '') throw error;
    return;
  }
  const lookInto = (name: string, full: string, real: string): void =>
    listInto(full, `${prefix}${name}/`, real, [...above, here], files, listing);
  for (const entry of entries) {
    if (isHidden(entry.name, listing)) continue;
    const full = join(dir, entry.name);
    if (entry.isDirectory()) {
      if (entry.name.startsWith('.')) continue;
      lookInto(entry.name, full, join(here, entry.name));
      continue;
    }
    const found = statSync(full, { throwIfNoEntry: false });
    if (found && listing.staysInside && entry.isSymbolicLink() && isOutside(full, above[0] ?? here)) {
      files.push(outside(prefix + entry.name));
      continue;
    }
    if (found?.isDirectory()) lookInto(entry.name, full, realIfThere(full));
    else if (found?.isFile()) files.push(listed(prefix + entry.name, found));
    else if (listing.withBroken) files.push(broken(prefix + entry.name));
  }
};

const listed = (path: string, { size, mtimeMs, ctimeMs, ino }: Stats): ListedFile => ({
  path,
  stamp: `${size} ${mtimeMs} ${ctimeMs} ${ino}`,
  changed: mtimeMs,
  size,
});

/** Bytes of the file that a stamp is of; none of what nobody may read. */
export const sizeIn = (stamp: string): number => (hasContent({ stamp }) ? Number.parseInt(stamp, 10) : 0);

const outside = (path: string): ListedFile => ({ path, stamp: OUTSIDE, changed: 0, size: 0 });

const broken = (path: string): ListedFile => ({ path, stamp: BROKEN, changed: 0, size: 0 });

/** One file below `dir` as `listFiles` lists it; undefined where there is none, or something else. */
export const listFile = (dir: string, path: string, listing: Listing = {}): ListedFile | undefined => {
  const names = path.split('/');
  const name = names.pop() ?? '';
  if (names.some((folder) => folder.startsWith('.')) || isHidden(name, listing)) return undefined;
  const full = join(dir, path);
  const found = statSync(full, { throwIfNoEntry: false });
  if (found && listing.staysInside) {
    const root = realpathSync(dir);
    if (isOutside(full, root)) {
      // Named by the link itself, which may be a folder above.
      const isAbove = names.some((_, i) => isOutside(join(dir, ...names.slice(0, i + 1)), root));
      return isAbove ? undefined : outside(path);
    }
  }
  if (found?.isFile()) return listed(path, found);
  const isThere = !found?.isDirectory() && lstatSync(full, { throwIfNoEntry: false }) !== undefined;
  return listing.withBroken && isThere ? broken(path) : undefined;
};

/**
 * Every file below `dir`, links followed as far as the listing says, sorted by path; nothing in a folder whose name begins
 * with a dot. Throws where the folder cannot be read.
 */
export const listFiles = (dir: string, listing: Listing = {}): readonly ListedFile[] => {
  const files: ListedFile[] = [];
  listInto(dir, '', realpathSync(dir), [], files, listing);
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
