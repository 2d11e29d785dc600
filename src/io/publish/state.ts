/** What we know of a published folder before a run changes it. */
import { join } from 'node:path';
import { utf8Text } from '../../text/utf8.ts';
import { disk, type FileSystem, type Found } from './file-system.ts';
import { type Journal, parseJournal } from './journal.ts';
import { type Entry, type Manifest, parseManifest } from './manifest.ts';
import { isBookkeeping, JOURNAL, MANIFEST } from './names.ts';

export interface State {
  readonly manifest: Manifest | undefined;
  /** Of a run that was stopped while it put files in place. */
  readonly journal: Journal | undefined;
  /**
   * Every path that is ours, with the ways in which we may have left the file: before the run that was
   * stopped, and by it. None is known of a file that an earlier stopped run had left.
   * What the owner has put since in a place that that run had emptied, or had still to fill, is not ours.
   */
  readonly known: ReadonlyMap<string, readonly Entry[]>;
  /** Folders that are ours, whether they are there or not. */
  readonly folders: ReadonlySet<string>;
}

const textAt = async (fs: FileSystem, path: string): Promise<string> => {
  const bytes = await fs.read(path);
  return bytes === undefined ? '' : utf8Text(bytes);
};

/** What the manifest and the journal of a folder say; nothing is known of a folder without either. */
export const readState = async (dir: string, fs: FileSystem = disk): Promise<State> => {
  // The journal first: it goes only when the manifest is in place, so one of the two is always found.
  const journal = parseJournal(await textAt(fs, join(dir, JOURNAL)));
  const manifest = parseManifest(await textAt(fs, join(dir, MANIFEST)));
  const known = new Map<string, Entry[]>();
  for (const files of [manifest?.files, journal?.next.files])
    for (const [path, entry] of files ?? []) known.set(path, [...(known.get(path) ?? []), entry]);
  if (journal) {
    const disown = (path: string, isOurs: (found: Found) => boolean): void => {
      const found = fs.lstat(join(dir, path));
      if (found?.kind === 'file' && isOurs(found)) known.set(path, known.get(path) ?? []);
      else if (found) known.delete(path);
    };
    // One that is not as it was found may be an edit, or put there after ours was gone: it is not taken away.
    for (const leaving of [...journal.first, ...journal.gone])
      disown(leaving.path, (found) => leaving.print === found.print);
    // A new file that is still aside was not put in place, so what stands there is not an edit of it.
    for (const { staged, path, isOver } of journal.place)
      if (!isOver && fs.lstat(join(dir, journal.staging, staged))) disown(path, () => false);
  }
  const folders = new Set([
    ...(manifest?.folders ?? []),
    ...(journal?.next.folders ?? []),
    ...(journal?.drop ?? []),
  ]);
  return { manifest, journal, known, folders };
};

/** Whether we published to the folder before, be it whole or half. */
export const isOurs = ({ manifest, journal }: State): boolean =>
  manifest !== undefined || journal !== undefined;

/** Names of what stands in a folder, publishing's own apart, sorted. */
export const othersIn = (dir: string, fs: FileSystem = disk): readonly string[] =>
  fs
    .list(dir)
    .map(({ name }) => name)
    .filter((name) => !isBookkeeping(name));
