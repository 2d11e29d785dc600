/** What a folder lacks of what is wanted, and what stands in the way. Looks, and changes nothing. */
import { join } from 'node:path';
import { inTheWay } from './failure.ts';
import type { FileSystem, Found } from './file-system.ts';
import { type Ground, groundOf } from './ground.ts';
import type { Leaving } from './journal.ts';
import { type Entry, foldersOf } from './manifest.ts';
import { isBookkeeping, JOURNAL, MANIFEST } from './names.ts';
import type { PublishedFile, Target } from './publish.ts';
import type { State } from './state.ts';

export interface WantedFile {
  readonly file: PublishedFile;
  /** The ways in which we may have left a file of this path. */
  readonly known: readonly Entry[];
  /** What stands there now; undefined when nothing does. */
  readonly found: Found | undefined;
  /** Its entry, where it stands as we left it. */
  readonly left: Entry | undefined;
}

export interface Plan {
  readonly dir: string;
  readonly state: State;
  /** In the order of `files` of the target. */
  readonly wanted: readonly WantedFile[];
  /** How many of them are to be brought: at most so many are written. */
  readonly lacks: number;
  /** Files of ours that are there and not wanted, sorted: those to take away before all else, and the others. */
  readonly first: readonly Leaving[];
  readonly gone: readonly Leaving[];
  /** Folders to make, the outer before the inner. */
  readonly make: readonly string[];
  /** Folders of ours that hold what is wanted, those to make among them. */
  readonly folders: readonly string[];
  /** Folders of ours that are there and do not. */
  readonly drop: readonly string[];
  /** What others have in the folder, links among them; what begins with a dot is not looked at. */
  readonly kept: readonly string[];
}

/** Throws for a path that would leave its folder or is another's: no channel may make one. */
export const checkPaths = ({ files }: Target): void => {
  const paths = new Set<string>();
  for (const { path } of files) {
    const parts = path.split('/');
    const escapes = parts.some(
      (part) => part === '' || part === '.' || part === '..' || /[\\:\0]/.test(part),
    );
    if (escapes || isBookkeeping(parts[0] ?? ''))
      throw new Error(`A published path must stay in its folder, found ${JSON.stringify(path)}`);
    if (paths.has(path))
      throw new Error(`A path must be published once, found ${JSON.stringify(path)} twice`);
    paths.add(path);
  }
  for (const path of paths)
    for (const folder of foldersOf(path))
      if (paths.has(folder)) throw new Error(`A path must be a file or a folder, found ${folder} as both`);
};

const KIND_WORDS = { file: 'a file', folder: 'a folder', link: 'a link', other: 'something' } as const;

const refuse = (dir: string, path: string, what: keyof typeof KIND_WORDS): never => {
  throw inTheWay(
    `${join(dir, path)} is ${KIND_WORDS[what]} that was not made here, and a file of the site belongs there. Move it away, and build again.`,
  );
};

/** Whether a folder where a file should be holds nothing but files of ours that go. */
const isGoing = (
  dir: string,
  path: string,
  state: State,
  unwanted: ReadonlySet<string>,
  fs: FileSystem,
): boolean =>
  state.folders.has(path) &&
  fs.list(join(dir, path)).every(({ name, isFolder }) => {
    const below = `${path}/${name}`;
    return isFolder ? isGoing(dir, below, state, unwanted, fs) : unwanted.has(below);
  });

const othersBelow = (dir: string, fs: FileSystem, isOurs: (path: string) => boolean): string[] => {
  const found: string[] = [];
  const below = (prefix: string): void => {
    for (const { name, isFolder } of fs.list(join(dir, prefix))) {
      if (name.startsWith('.')) continue;
      if (isFolder) below(`${prefix}${name}/`);
      else if (!isOurs(prefix + name)) found.push(prefix + name);
    }
  };
  below('');
  return found.sort();
};

/** What is there of the files that are not wanted any more. Where we find no file, or a way that is not ours, nothing is ours to take away. */
const unwantedIn = (ground: Ground, state: State, paths: ReadonlySet<string>): Leaving[] =>
  [...state.known.keys()].sort().flatMap((path) => {
    const found = paths.has(path) ? undefined : ground.at(path);
    return found?.kind === 'file' ? [{ path, print: found.print }] : [];
  });

/** A path as a disk that tells neither capitals nor normal forms apart has it. */
const folded = (path: string): string => path.normalize('NFC').toLowerCase();

/** The plan for one target whose real folder is `dir`. Throws, naming the path, where something that is not ours stands in the way. */
export const planFor = (target: Target, dir: string, state: State, fs: FileSystem): Plan => {
  const ground = groundOf(dir, fs);
  for (const name of [MANIFEST, JOURNAL]) {
    const found = fs.lstat(join(dir, name));
    if (found && found.kind !== 'file') refuse(dir, name, found.kind);
  }
  const paths = new Set(target.files.map(({ path }) => path));
  const unwanted = unwantedIn(ground, state, paths);
  const going = new Set(unwanted.map(({ path }) => path));
  const makesWay = new Set<string>();
  const wanted = target.files.map((file): WantedFile => {
    const { path } = file;
    const known = state.known.get(path) ?? [];
    const found = ground.at(path);
    if (found.kind === 'absent') return { file, known, found: undefined, left: undefined };
    if (found.kind === 'barred') {
      if (!going.has(found.at)) refuse(dir, found.at, fs.lstat(join(dir, found.at))?.kind ?? 'other');
      makesWay.add(found.at);
      return { file, known, found: undefined, left: undefined };
    }
    if (found.kind === 'folder' && isGoing(dir, path, state, going, fs)) {
      for (const one of going) if (one.startsWith(`${path}/`)) makesWay.add(one);
      return { file, known, found: undefined, left: undefined };
    }
    if (found.kind === 'file' && !state.known.has(path)) {
      // Ours under its former name, on a disk that takes both for one: it goes before the new one comes.
      const former = unwanted.find((one) => one.print === found.print && folded(one.path) === folded(path));
      if (!former) refuse(dir, path, found.kind);
      else makesWay.add(former.path);
      return { file, known, found: undefined, left: undefined };
    }
    if (found.kind !== 'file') return refuse(dir, path, found.kind);
    return { file, known, found, left: known.find(({ print }) => print === found.print) };
  });
  const goesFirst = ({ path }: Leaving): boolean =>
    makesWay.has(path) || (target.first?.(path, going) ?? false);
  const ways = new Set([...paths].flatMap(foldersOf));
  const make = [...ways].filter((folder) => ground.folder(folder) !== 'there').sort();
  const ours = [...state.folders].filter((folder) => ground.folder(folder) === 'there');
  return {
    dir,
    state,
    wanted,
    lacks: wanted.filter(({ left, file }) => left?.key !== file.key).length,
    first: unwanted.filter(goesFirst),
    gone: unwanted.filter((one) => !goesFirst(one)),
    make,
    folders: [...new Set([...make, ...ours.filter((folder) => ways.has(folder))])],
    drop: ours.filter((folder) => !ways.has(folder)).sort(),
    kept: othersBelow(dir, fs, (path) => state.known.has(path)),
  };
};
