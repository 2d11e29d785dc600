/** Where a folder really is. */
import { basename, dirname, join, resolve } from 'node:path';
import { codeOf } from '../../text/error-code.ts';
import { disk, type FileSystem } from './file-system.ts';

/** As many links as Linux follows in one path before it gives up (path_resolution(7)). */
const MOST_LINKS = 40;

/** The absolute path of a folder with every link on the way followed, also where the folder is not made yet. Rejects with ENOENT for a link that leads nowhere. */
export const realFolder = async (dir: string, fs: FileSystem = disk): Promise<string> => {
  const path = resolve(dir);
  try {
    return await fs.realpath(path);
  } catch (error) {
    if (codeOf(error) !== 'ENOENT' || fs.lstat(path)?.kind === 'link' || dirname(path) === path) throw error;
  }
  return join(await realFolder(dirname(path), fs), basename(path));
};

/** Where a link on the way to a folder leads that leads nowhere; undefined when there is none. */
export const danglingLink = async (dir: string, fs: FileSystem = disk): Promise<string | undefined> => {
  let path = resolve(dir);
  for (let followed = 0; followed < MOST_LINKS; followed++) {
    const found = fs.lstat(path);
    if (!found && followed > 0) return path;
    if (!found) return dirname(path) === path ? undefined : danglingLink(dirname(path), fs);
    if (found.kind !== 'link') return undefined;
    path = resolve(dirname(path), await fs.readlink(path));
  }
  return path;
};
