/** A disk that tells neither capitals nor normal forms apart, and keeps names as they were given. */
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { disk, type FileSystem } from '../../src/io/publish/file-system.ts';

const folded = (name: string): string => name.normalize('NFC').toLowerCase();

const namesIn = (folder: string): readonly string[] => {
  try {
    return readdirSync(folder);
  } catch {
    return [];
  }
};

/** A path as the disk has it, where it has it at all. */
const asItStands = (path: string): string =>
  path.split('/').reduce((above, name) => {
    const found = namesIn(above || '/').find((one) => folded(one) === folded(name));
    return join(above || '/', found ?? name);
  }, '');

/** The real disk, seen so. */
export const foldingDisk: FileSystem = {
  lstat: (path) => disk.lstat(asItStands(path)),
  list: (dir) => disk.list(asItStands(dir)),
  read: (path) => disk.read(asItStands(path)),
  write: (path, bytes) => disk.write(asItStands(path), bytes),
  claim: (path, text) => disk.claim(asItStands(path), text),
  rename: (from, to) => disk.rename(asItStands(from), asItStands(to)),
  unlink: (path) => disk.unlink(asItStands(path)),
  rmdir: (path) => disk.rmdir(asItStands(path)),
  makeFolder: (path) => disk.makeFolder(asItStands(path)),
  sync: (dir) => disk.sync(asItStands(dir)),
  realpath: (path) => disk.realpath(asItStands(path)),
  readlink: (path) => disk.readlink(asItStands(path)),
  touch: (path) => disk.touch(asItStands(path)),
};
