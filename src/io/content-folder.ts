/** A content folder on the disk: what is in it, read where it changed, and remembered from one run to the next. */
import { readFile } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import type { Memory } from '../text/memory.ts';
import { decodeText } from './decode-text.ts';
import { type KnownFile, knowFiles, type Progress, rememberedFiles, rememberFiles } from './know-files.ts';
import { CONTENT, type ListedFile, listFile, listFiles } from './list-files.ts';
import { readInto } from './read-parcels.ts';

export interface ContentFolder {
  /** Absolute. */
  readonly path: string;
  /** Every file as it was last listed, sorted by path. */
  readonly listed: () => readonly ListedFile[];
  /**
   * Lists these paths again, or every file where none are named, and gives what is in all of them. Rejects where the
   * folder cannot be read.
   */
  readonly look: (paths?: readonly string[]) => Promise<ReadonlyMap<string, KnownFile>>;
  /** A text as `decodeText` reads it. */
  readonly readText: (path: string) => Promise<string>;
  /** Streams a text file into a reader made by `begin`; `path` may lead out of the folder, and be absolute. */
  readonly streamInto: typeof readInto;
  /** Writes down what was seen, for the next time that the folder is opened. */
  readonly remember: () => void;
}

const byPath = (a: ListedFile, b: ListedFile): number => (a.path < b.path ? -1 : 1);

/** The files of `listed` with those at `paths` listed again. */
const relisted = (
  folder: string,
  listed: readonly ListedFile[],
  paths: readonly string[],
): readonly ListedFile[] => {
  const files = new Map(listed.map((file) => [file.path, file]));
  for (const path of paths) {
    const file = listFile(folder, path, CONTENT);
    if (file) files.set(path, file);
    // A folder that came or went takes files with it that nobody named.
    else if (!files.delete(path)) return listFiles(folder, CONTENT);
  }
  return [...files.values()].sort(byPath);
};

/** The content folder at an absolute path. `onPhotos` hears of photos that are looked at. */
export const contentFolder = (folder: string, memory: Memory, onPhotos?: Progress): ContentFolder => {
  let listed: readonly ListedFile[] = [];
  let known = rememberedFiles(folder, memory);
  let lookedAt = 0;
  return {
    path: folder,
    listed: () => listed,
    look: async (paths) => {
      lookedAt = Date.now();
      listed = paths ? relisted(folder, listed, paths) : listFiles(folder, CONTENT);
      known = await knowFiles(folder, listed, known, memory, onPhotos);
      return known;
    },
    readText: async (path) => decodeText(await readFile(join(folder, path))),
    streamInto: (path, begin) => readInto(resolve(folder, path), begin),
    remember: () => rememberFiles(folder, known, listed, lookedAt, memory),
  };
};
