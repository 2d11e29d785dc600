/** What a run that was stopped left behind, put right by a run that does not publish. */
import { join } from 'node:path';
import { failureOf } from './failure.ts';
import { disk, type FileSystem } from './file-system.ts';
import { lock } from './lock.ts';
import { isOfARun, JOURNAL } from './names.ts';
import { putInPlace } from './put-in-place.ts';
import { realFolder } from './real-folder.ts';
import { discard } from './stage.ts';
import { readState } from './state.ts';

/** `finished`: the stopped run's files are in place. `cleared`: nothing that it had decided was still to be done, and what it had made aside is gone. `left`: it holds what must not be shown, so that only a publish may go on from it. */
export type Settled = 'nothing to do' | 'finished' | 'cleared' | 'left' | 'another run is at work';

/**
 * For a command that publishes nothing (or may not, because something must be fixed) and finds what a stopped
 * run left in `dir`. What that run had decided is carried out as a whole, unless `isSealed` says that one of
 * its files must not be shown any more: then nothing is put in place. A command that publishes need not
 * ask, because `publish` goes on from the same state to its own. Rejects with a `PublishFailure` when the disk refuses.
 */
export const settle = async (
  dir: string,
  isSealed: (path: string) => boolean = () => false,
  fs: FileSystem = disk,
): Promise<Settled> => {
  let halfWay = false;
  try {
    const folder = await realFolder(dir, fs);
    if (!fs.list(folder).some(({ name }) => isOfARun(name))) return 'nothing to do';
    halfWay = fs.lstat(join(folder, JOURNAL)) !== undefined;
    const held = await lock(fs, folder, { wait: false });
    if (!held) return 'another run is at work';
    try {
      const { journal } = await readState(folder, fs);
      halfWay = journal !== undefined;
      await discard(folder, fs, (name) => name !== journal?.staging);
      if (!journal) return 'cleared';
      if ([...journal.next.files.keys()].some(isSealed)) return 'left';
      await putInPlace(fs, folder, journal);
      return 'finished';
    } finally {
      await held.release();
    }
  } catch (error) {
    throw failureOf(error, halfWay);
  }
};
