/** Hears of changes anywhere in a folder. */
import { type FSWatcher, readdirSync, statSync, watch } from 'node:fs';
import { join } from 'node:path';

/**
 * Where the system itself hears of a whole tree. Elsewhere Node 20 watches each file of one that is asked for, and hears
 * nothing more of a file over which another was once renamed, as most editors save (seen with 20.20); and where it does,
 * a folder that is watched by itself could not be moved (from memory, of Windows).
 */
const WHOLE_TREES: ReadonlySet<NodeJS.Platform> = new Set(['darwin', 'win32']);

export interface WatchedTree {
  /** Watches folders that have come too, and none that is gone. */
  readonly renew: () => void;
  readonly close: () => void;
}

/** A folder with all below it, relative to it: those that a dot hides hold nothing of the owner's. */
const foldersIn = (root: string, folder = ''): readonly string[] => [
  folder,
  ...readdirSync(join(root, folder), { withFileTypes: true }).flatMap((entry) =>
    entry.isDirectory() && !entry.name.startsWith('.') ? foldersIn(root, join(folder, entry.name)) : [],
  ),
];

/**
 * Calls `onChange` with what changed, relative to the folder, or null where the system does not say what. It may hear of
 * one change several times, and of none on a disk that tells of none.
 */
export const watchTree = (
  root: string,
  onChange: (path: string | null) => void,
  platform: NodeJS.Platform = process.platform,
): WatchedTree => {
  const recursive = WHOLE_TREES.has(platform);
  /** By folder; `number` is the folder's on the disk, because another may have come in its place. */
  const watchers = new Map<string, { readonly watcher: FSWatcher; readonly number: number }>();
  const stop = (folder: string): void => {
    watchers.get(folder)?.watcher.close();
    watchers.delete(folder);
  };
  const start = (folder: string): void => {
    try {
      const number = statSync(join(root, folder)).ino;
      if (watchers.get(folder)?.number === number) return;
      stop(folder);
      const watcher = watch(join(root, folder), { recursive, persistent: false }, (_, name) =>
        onChange(name === null ? null : join(folder, name)),
      );
      watcher.on('error', () => stop(folder));
      watchers.set(folder, { watcher, number });
    } catch {
      // It is gone again, or the system watches no more: looking will do.
    }
  };
  const renew = (): void => {
    let folders: readonly string[] = [''];
    try {
      if (!recursive) folders = foldersIn(root);
    } catch {
      // A folder went while it was listed: the next time all are there.
    }
    for (const folder of [...watchers.keys()]) if (!folders.includes(folder)) stop(folder);
    folders.forEach(start);
  };
  renew();
  return { renew, close: () => [...watchers.keys()].forEach(stop) };
};
