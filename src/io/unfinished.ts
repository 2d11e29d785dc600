/** Files that are being written: named apart until they are whole, and taken away where a stopped run left them. */
import { readdirSync, rmSync, statSync } from 'node:fs';
import { dirname, join } from 'node:path';

const ENDING = '.part';
/** How the names begin that stand among an owner's own files. */
const ASIDE = '.lidlore-new';

/** Milliseconds after which nobody writes to one any more: a run that did was stopped. */
const ABANDONED = 3_600_000;

/** A name to write a file under first. Not named for the process, because another machine may write into the same folder. */
export const unfinished = (path: string): string => {
  // Loaded by whoever writes, because who only looks whether anything has changed shall not wait for it.
  const { randomUUID } = process.getBuiltinModule('node:crypto');
  return `${path}.${randomUUID()}${ENDING}`;
};

/** A hidden name beside a path of an owner's folder, to make a file or folder under first: no listing of content sees it. */
export const aside = (path: string): string => unfinished(join(dirname(path), ASIDE));

const removeOld = (folder: string, isOurs: (name: string) => boolean): void => {
  try {
    for (const name of readdirSync(folder).filter((one) => one.endsWith(ENDING) && isOurs(one))) {
      const path = join(folder, name);
      if (Date.now() - statSync(path).mtimeMs > ABANDONED) rmSync(path, { recursive: true, force: true });
    }
  } catch {
    // Gone meanwhile, or the disk refuses.
  }
};

/** Takes away what stopped runs left in a folder of our own. Never throws: a file too many does no harm. */
export const removeAbandoned = (folder: string): void => removeOld(folder, () => true);

/** The same in a folder of the owner's, where only hidden names of ours are taken away. */
export const removeAside = (folder: string): void =>
  removeOld(folder, (name) => name.startsWith(`${ASIDE}.`));
