import { join } from 'node:path';
import { disk } from '../../src/io/publish/file-system.ts';
import { readState } from '../../src/io/publish/state.ts';

/** The keys of the files that stand in a folder as we left them, by path. Empty for a folder that is not ours or is not there. */
export const standing = async (dir: string): Promise<ReadonlyMap<string, string>> => {
  const keys = new Map<string, string>();
  for (const [path, entries] of (await readState(dir)).known) {
    const found = disk.lstat(join(dir, path));
    const entry =
      found?.kind === 'file' ? entries.find((one) => one.key !== '' && one.print === found.print) : undefined;
    if (entry) keys.set(path, entry.key);
  }
  return keys;
};
