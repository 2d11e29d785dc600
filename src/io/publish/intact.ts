/** Whether a published folder is as we left it. Imports nothing heavy, because it is asked before anything else is loaded. */
import { lstatSync, readdirSync, readFileSync } from 'node:fs';
import { parseManifest, printOf } from './manifest.ts';
import { isOfARun, MANIFEST } from './names.ts';

const textAt = (path: string): string | undefined => {
  try {
    return readFileSync(path, 'utf8');
  } catch {
    return undefined;
  }
};

/**
 * The hash that the folder's manifest bears, where no publish is under way or was stopped there, and every file of it is as
 * we left it (size, time of change and inode); otherwise undefined. Never throws.
 */
export const intact = (dir: string): string | undefined => {
  try {
    // What a stopped run had made aside may be sealed by now, and has to go though no file of ours is changed.
    if (readdirSync(dir).some(isOfARun)) return undefined;
    const manifest = parseManifest(textAt(`${dir}/${MANIFEST}`) ?? '');
    if (!manifest || manifest.id === '') return undefined;
    for (const [path, entry] of manifest.files) {
      const found = lstatSync(`${dir}/${path}`, { throwIfNoEntry: false });
      if (!found?.isFile() || printOf(found) !== entry.print) return undefined;
    }
    return manifest.id;
  } catch {
    return undefined;
  }
};
