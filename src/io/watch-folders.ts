/** Hears of changes in folders, whoever makes them. */
import { basename } from 'node:path';
import { CONTENT, listedIfThere, listFile, listFiles } from './list-files.ts';
import { watchTree } from './watched-tree.ts';

/** Milliseconds of quiet after a change before it is told: programs write a file in several steps. */
const QUIET = 30;
/** Milliseconds between looks by ourselves, because not every disk tells of changes (a mounted folder does not). */
const LOOK = 1_500;

export interface Watched {
  readonly close: () => void;
}

/** Stamps by the folder's number and the path in it; the content is the first. */
const stampsOf = (folders: readonly string[]): ReadonlyMap<string, string> => {
  const [content = '', ...others] = folders;
  try {
    return new Map(
      [listFiles(content, CONTENT), ...others.map(listedIfThere)].flatMap((files, folder) =>
        files.map(({ path, stamp }) => [`${folder} ${path}`, stamp] as const),
      ),
    );
  } catch {
    // The folder is gone for the moment, or for good: whoever asks for it is told.
    return new Map();
  }
};

/** Keys of what is there once more or less, or is another file. */
const differing = (one: ReadonlyMap<string, string>, other: ReadonlyMap<string, string>): readonly string[] =>
  [...new Set([...one.keys(), ...other.keys()])].filter((key) => one.get(key) !== other.get(key));

/**
 * Calls `onChange` after something in the content folder or in one of the other folders has changed. `knownStamp` gives the
 * stamp with which a file of the content is known already: where all that changed is as it says, nobody is called and
 * nothing else is looked at, because that was our own change.
 */
export const watchFolders = (
  content: string,
  others: readonly string[],
  onChange: () => void,
  knownStamp: (path: string) => string | undefined = () => undefined,
): Watched => {
  const folders = [content, ...others];
  let known = stampsOf(folders);
  let quiet: NodeJS.Timeout | undefined;
  /** Files that changed since the last look; undefined where it is not known which. */
  let named: Set<string> | undefined = new Set();
  const look = (): void => {
    named = new Set();
    // What comes into a new folder after this listing is heard of.
    for (const { renew } of trees) renew();
    const now = stampsOf(folders);
    const isOurs = (key: string): boolean =>
      key.startsWith('0 ') && now.get(key) === knownStamp(key.slice(2));
    const isNew = !differing(now, known).every(isOurs);
    known = now;
    if (isNew) onChange();
  };
  /** Stamps of the files that were named, where each of them is known as it stands there. */
  const namedAsKnown = (): ReadonlyMap<string, string> | undefined => {
    if (named === undefined) return undefined;
    const stamps = new Map<string, string>();
    for (const path of named) {
      // Whoever writes a file aside first gives it such a name.
      if (basename(path).startsWith('.')) continue;
      const stamp = listFile(content, path, CONTENT)?.stamp;
      if (stamp === undefined || stamp !== knownStamp(path)) return undefined;
      stamps.set(`0 ${path}`, stamp);
    }
    return stamps;
  };
  const lookAtNamed = (): void => {
    const stamps = namedAsKnown();
    if (stamps) {
      named = new Set();
      known = new Map([...known, ...stamps]);
    } else look();
  };
  const soon = (folder: string, path: string | null): void => {
    if (folder === content && path !== null) named?.add(path.replaceAll('\\', '/'));
    else named = undefined;
    clearTimeout(quiet);
    quiet = setTimeout(lookAtNamed, QUIET);
  };
  const trees = folders.map((folder) => watchTree(folder, (path) => soon(folder, path)));
  const looking = setInterval(look, LOOK);
  looking.unref();
  return {
    close: () => {
      clearTimeout(quiet);
      clearInterval(looking);
      for (const { close } of trees) close();
    },
  };
};
