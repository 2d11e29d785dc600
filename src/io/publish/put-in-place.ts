/** Carries out a journal. Every step can be done twice, so a run that was stopped is finished by doing all of it again. */
import { dirname, join } from 'node:path';
import { codeOf } from '../../text/error-code.ts';
import { inTheWay } from './failure.ts';
import type { FileSystem } from './file-system.ts';
import { groundOf } from './ground.ts';
import { type Journal, type Leaving, STAGED_MANIFEST } from './journal.ts';
import { JOURNAL, MANIFEST } from './names.ts';
import { allAtOnce, discard } from './stage.ts';

/** Removes a folder of ours where it is empty. What the owner put there keeps it. */
const removeIfEmpty = async (fs: FileSystem, dir: string): Promise<boolean> => {
  try {
    await fs.rmdir(dir);
    return true;
  } catch (error) {
    if (/^(ENOENT|ENOTDIR|ENOTEMPTY|EEXIST)$/.test(codeOf(error))) return false;
    throw error;
  }
};

/** Of each of our folders, the inner before the outer. */
const removeEmpty = async (
  fs: FileSystem,
  dir: string,
  folders: readonly string[],
  touched: Set<string>,
): Promise<void> => {
  const ground = groundOf(dir, fs);
  for (const folder of folders) {
    if (ground.folder(folder) !== 'there' || fs.list(join(dir, folder)).length > 0) continue;
    if (await removeIfEmpty(fs, join(dir, folder))) touched.add(dirname(join(dir, folder)));
  }
};

const place = async (fs: FileSystem, dir: string, journal: Journal, touched: Set<string>): Promise<void> => {
  // Looked at again, because the owner may have put something there since the plan was made.
  const ground = groundOf(dir, fs);
  for (const { staged, path, isOver } of journal.place) {
    // Not aside any more, it was put in place before; what became of it since is for the next publish to see.
    if (!fs.lstat(join(dir, journal.staging, staged))) continue;
    const found = ground.at(path);
    const isOurs = found.kind === 'file' && isOver;
    if (found.kind !== 'absent' && !isOurs) {
      const at = join(dir, found.kind === 'barred' ? found.at : path);
      throw inTheWay(`${at} was put there while the site was published. Move it away, and build again.`);
    }
    await fs.rename(join(dir, journal.staging, staged), join(dir, path));
    touched.add(dirname(join(dir, path)));
  }
};

const takeAway = async (
  fs: FileSystem,
  dir: string,
  files: readonly Leaving[],
  touched: Set<string>,
): Promise<void> => {
  const ground = groundOf(dir, fs);
  for (const leaving of files) {
    const { path } = leaving;
    const found = ground.at(path);
    // Anything else that stands there by now is the owner's.
    if (found.kind !== 'file' || found.print !== leaving.print) continue;
    await fs.unlink(join(dir, path));
    touched.add(dirname(join(dir, path)));
  }
};

/** The manifest is there with all that it names: the journal has done its work. */
export const close = async (fs: FileSystem, dir: string, { staging }: Journal): Promise<void> => {
  try {
    await fs.rename(join(dir, staging, STAGED_MANIFEST), join(dir, MANIFEST));
  } catch (error) {
    // Stopped between this rename and the next line, the run before has done it.
    if (codeOf(error) !== 'ENOENT' || fs.lstat(join(dir, MANIFEST))?.kind !== 'file') throw error;
  }
  await fs.sync(dir);
  if (fs.lstat(join(dir, JOURNAL))) await fs.unlink(join(dir, JOURNAL));
  await discard(dir, fs, () => true);
};

/**
 * What is sealed again goes first; then pictures and other assets come, then pages, then the lists that name
 * pages; what else is gone goes last: so each page finds what it refers to at every moment, unless that is
 * sealed. Rejects when the disk refuses or the owner has put something in the way.
 */
export const putInPlace = async (fs: FileSystem, dir: string, journal: Journal): Promise<void> => {
  const touched = new Set<string>();
  await takeAway(fs, dir, journal.first, touched);
  const dropped = [...journal.drop].sort().reverse();
  // A file may be wanted where a folder of ours was.
  const makesWay = (folder: string): boolean =>
    journal.place.some(({ path }) => `${folder}/`.startsWith(`${path}/`));
  await removeEmpty(fs, dir, dropped.filter(makesWay), touched);
  for (const folder of journal.make) {
    if (groundOf(dir, fs).folder(folder) !== 'absent') continue;
    await fs.makeFolder(join(dir, folder));
    touched.add(dirname(join(dir, folder)));
  }
  await place(fs, dir, journal, touched);
  await takeAway(fs, dir, journal.gone, touched);
  await removeEmpty(fs, dir, dropped, touched);
  await allAtOnce(
    [...touched].filter((folder) => fs.lstat(folder)),
    fs.sync,
  );
  await close(fs, dir, journal);
};
