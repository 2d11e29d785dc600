/** Whether a published folder is as we left it. Imports nothing heavy, because it is asked before anything else is loaded. */
import { lstatSync, readdirSync, readFileSync, type Stats } from 'node:fs';
import { type Entry, mixed, parseManifest, printOf } from './manifest.ts';
import { isOfARun, MANIFEST } from './names.ts';

const textAt = (path: string): string | undefined => {
  try {
    return readFileSync(path, 'utf8');
  } catch {
    return undefined;
  }
};

/**
 * The hash that the folder's manifest bears with one number for all files, where no publish is under way or was stopped
 * there, every file of it is there and `holds` says yes to each; otherwise undefined. Never throws.
 */
const stamped = (dir: string, holds: (found: Stats, entry: Entry) => boolean): string | undefined => {
  try {
    // What a stopped run had made aside may be sealed by now, and has to go though no file of ours is changed.
    if (readdirSync(dir).some(isOfARun)) return undefined;
    const manifest = parseManifest(textAt(`${dir}/${MANIFEST}`) ?? '');
    if (!manifest || manifest.id === '') return undefined;
    // Mixed from one file to the next, because to compare a print of each takes longer than all the rest.
    let all = 0;
    for (const [path, entry] of manifest.files) {
      const found = lstatSync(`${dir}/${path}`, { throwIfNoEntry: false });
      if (!found?.isFile() || !holds(found, entry)) return undefined;
      all = mixed(found, all);
    }
    return `${manifest.id} ${all}`;
  } catch {
    return undefined;
  }
};

const isAsLeft = (found: Stats, { print }: Entry): boolean => printOf(found) === print;

/**
 * What a folder is known by from now on, where every file of it is as we left it (size, time of change and inode); otherwise
 * undefined. Never throws.
 */
export const intact = (dir: string): string | undefined => stamped(dir, isAsLeft);

/** The same as `intact` gave, as long as nobody has touched a file since. Never throws. */
export const stampOf = (dir: string): string | undefined => stamped(dir, () => true);
