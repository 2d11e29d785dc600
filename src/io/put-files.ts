/**
 * Puts files beside an owner's own: all of them or none, and never one over another. All is made aside first; then a
 * folder that was not there comes by one rename, with everything in it, so that a stop leaves no half of a cycle.
 */
import {
  copyFileSync,
  existsSync,
  lstatSync,
  mkdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
} from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { codeOf } from '../text/error-code.ts';
import { putNew, syncFolder, writeWhole } from './owned-files.ts';
import { aside, removeAside } from './unfinished.ts';

/** What is to be put; every path is absolute. */
export interface PutPlan {
  /** Folders that are to be there, also with nothing in them. */
  readonly folders: readonly string[];
  readonly files: readonly { readonly path: string; readonly text: string }[];
  readonly copies: readonly { readonly from: string; readonly to: string }[];
  /** Files that stand there, each with the bytes that the change was made for. */
  readonly changes: readonly { readonly path: string; readonly was: Uint8Array; readonly text: string }[];
}

/** A step that is taken at once or not at all, and can be taken back. */
interface Step {
  readonly take: () => void;
  readonly back: () => void;
}

const refusal = (code: string, path: string, why: string): Error =>
  Object.assign(new Error(`${code}: ${path} ${why}`), { code, path });

/** The outermost part of a path that is not there; undefined where all of it is. */
const firstMissing = (path: string): string | undefined => {
  if (lstatSync(path, { throwIfNoEntry: false })) return undefined;
  let here = path;
  while (!existsSync(dirname(here))) here = dirname(here);
  if (!statSync(dirname(here)).isDirectory()) throw refusal('EEXIST', dirname(here), 'lies in the way');
  return here;
};

/** Where things are made before they are put in place: the place of each path, and what puts all of them. */
const stage = () => {
  const made = new Map<string, string>();
  const steps: Step[] = [];
  const places = new Set<string>();

  const placeAside = (path: string): string => {
    const folder = dirname(path);
    if (!places.has(folder)) removeAside(folder);
    places.add(folder);
    const place = aside(path);
    made.set(path, place);
    return place;
  };

  /** Where a path is written first: within a new folder that is aside itself, or aside beside its own place. */
  const placeFor = (path: string, kind: 'file' | 'folder'): string | undefined => {
    for (const [root, place] of made)
      if (path === root || path.startsWith(join(root, '/'))) {
        const within = join(place, relative(root, path));
        mkdirSync(kind === 'folder' ? within : dirname(within), { recursive: true });
        return within;
      }
    const root = firstMissing(path);
    if (root === undefined) {
      if (kind === 'file') throw refusal('EEXIST', path, 'stands there already');
      if (!lstatSync(path).isDirectory()) throw refusal('EEXIST', path, 'lies in the way');
      return undefined;
    }
    const isOne = root === path && kind === 'file';
    const place = placeAside(root);
    if (!isOne) mkdirSync(place);
    steps.push({
      take: () => (isOne ? putNew(place, root) : putFolder(place, root)),
      back: () => rmSync(root, { recursive: true, force: true }),
    });
    return isOne ? place : placeFor(path, kind);
  };

  return {
    steps,
    folder: (path: string): void => void placeFor(path, 'folder'),
    file: (path: string): string => placeFor(path, 'file') ?? path,
    /** A new text for a file that stands there. */
    change: (path: string, was: Uint8Array, text: string): void => {
      const place = placeAside(path);
      writeWhole(place, Buffer.from(text), lstatSync(path).mode & 0o7777);
      steps.push({
        take: () => {
          if (Buffer.compare(readFileSync(path), was) !== 0)
            throw refusal('EBUSY', path, 'was changed by another program meanwhile');
          renameSync(place, path);
        },
        back: () => {
          writeWhole(place, was, lstatSync(path).mode & 0o7777);
          renameSync(place, path);
        },
      });
    },
    sync: (): void => places.forEach(syncFolder),
    clear: (): void => {
      for (const place of made.values()) rmSync(place, { recursive: true, force: true });
    },
  };
};

const putFolder = (place: string, path: string): void => {
  try {
    renameSync(place, path);
  } catch (error) {
    // Something came there meanwhile.
    if (['ENOTEMPTY', 'EEXIST', 'ENOTDIR'].includes(codeOf(error)))
      throw refusal('EEXIST', path, 'stands there already');
    throw error;
  }
};

/**
 * Makes folders and files, copies, and changes. Where the disk refuses anything, or a file stands where one is to be
 * made, all that was done is undone and the error is passed on. A process that is killed leaves each new folder whole or not
 * at all, and each file as it was or as it is to be; pictures come before the records that name them.
 */
export const putFiles = ({ folders, files, copies, changes }: PutPlan): void => {
  const staged = stage();
  const taken: Step[] = [];
  // Ctrl-C waits until all of it is there.
  const unheard = (): void => {};
  process.on('SIGINT', unheard);
  try {
    for (const path of folders) staged.folder(path);
    for (const { from, to } of copies) copyFileSync(from, staged.file(to));
    for (const { path, text } of files) writeWhole(staged.file(path), Buffer.from(text));
    for (const { path, was, text } of changes) staged.change(path, was, text);
    for (const step of staged.steps) {
      step.take();
      taken.push(step);
    }
    staged.sync();
  } catch (error) {
    for (const { back } of taken.reverse())
      try {
        back();
      } catch {
        // The disk refuses this too; the rest is taken back all the same.
      }
    throw error;
  } finally {
    staged.clear();
    process.off('SIGINT', unheard);
  }
};
