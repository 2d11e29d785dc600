/** Files that are being written: named apart until they are whole, and taken away where a stopped run left them. */
import { randomUUID } from 'node:crypto';
import { readdirSync, rmSync, statSync } from 'node:fs';
import { join } from 'node:path';

const ENDING = '.part';

/** Milliseconds after which nobody writes to one any more: a run that did was stopped. */
const ABANDONED = 3_600_000;

/** A name to write a file under first. Not named for the process, because another machine may write into the same folder. */
export const unfinished = (path: string): string => `${path}.${randomUUID()}${ENDING}`;

/** Takes away what stopped runs left in a folder. Never throws: a file too many does no harm. */
export const removeAbandoned = (folder: string): void => {
  try {
    for (const name of readdirSync(folder).filter((one) => one.endsWith(ENDING))) {
      const path = join(folder, name);
      if (Date.now() - statSync(path).mtimeMs > ABANDONED) rmSync(path, { force: true });
    }
  } catch {
    // Gone meanwhile, or the disk refuses.
  }
};
