/** Hears of changes in folders, whoever makes them. */
import { type FSWatcher, watch } from 'node:fs';
import { CONTENT, listedIfThere, listFiles } from './list-files.ts';

/** Milliseconds of quiet after a change before it is told: programs write a file in several steps. */
const QUIET = 30;
/** Milliseconds between looks by ourselves, because not every disk tells of changes (a mounted folder does not). */
const LOOK = 1_500;

export interface Watched {
  readonly close: () => void;
  /** Takes what is there now for known, so that our own change is not told. */
  readonly settle: () => void;
}

const stampsOf = (content: string, others: readonly string[]): string => {
  try {
    return [listFiles(content, CONTENT), ...others.map(listedIfThere)]
      .flat()
      .map(({ path, stamp }) => `${path} ${stamp}`)
      .join('\n');
  } catch {
    // The folder is gone for the moment, or for good: whoever asks for it is told.
    return '';
  }
};

/** Calls `onChange` after something in the content folder or in one of the other folders has changed. */
export const watchFolders = (content: string, others: readonly string[], onChange: () => void): Watched => {
  let known = stampsOf(content, others);
  let quiet: NodeJS.Timeout | undefined;
  const look = (): void => {
    const now = stampsOf(content, others);
    if (now === known) return;
    known = now;
    onChange();
  };
  const soon = (): void => {
    clearTimeout(quiet);
    quiet = setTimeout(look, QUIET);
  };
  const watchers: FSWatcher[] = [];
  for (const folder of [content, ...others]) {
    try {
      const watcher = watch(folder, { recursive: true, persistent: false }, soon);
      watcher.on('error', () => watcher.close());
      watchers.push(watcher);
    } catch {
      // Looking by ourselves will do.
    }
  }
  const looking = setInterval(look, LOOK);
  looking.unref();
  return {
    settle: () => {
      known = stampsOf(content, others);
    },
    close: () => {
      clearTimeout(quiet);
      clearInterval(looking);
      for (const watcher of watchers) watcher.close();
    },
  };
};
