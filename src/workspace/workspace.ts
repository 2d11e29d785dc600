/**
 * One content folder, opened: its records, its box and what is wrong with them, kept up to date as files change. What
 * every command begins with.
 */
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { decodeText } from '../io/decode-text.ts';
import {
  type KnownFile,
  knowFiles,
  type Progress,
  rememberedFiles,
  rememberFiles,
} from '../io/know-files.ts';
import { type ListedFile, listFile, listFiles } from '../io/list-files.ts';
import type { Memory } from '../text/memory.ts';
import { assembler, type Snapshot } from './assemble.ts';

export interface Workspace {
  /** The content folder, an absolute path. */
  readonly folder: string;
  readonly memory: Memory;
  readonly snapshot: () => Snapshot;
  /** Files with what tells a changed one from an unchanged one, sorted by path. */
  readonly listed: () => readonly ListedFile[];
  /**
   * Reads again what lies at these paths (relative to the folder, forward slashes), or looks at every file where none
   * are named, and does only what those that changed ask for.
   */
  readonly update: (paths?: readonly string[]) => Promise<Snapshot>;
  /** Writes down what is known of the files, for the next time that the folder is opened. */
  readonly remember: () => void;
}

export interface OpenOptions {
  /** An absolute path. */
  readonly folder: string;
  readonly memory: Memory;
  /** Hears of photos that are looked at. */
  readonly onPhotos?: Progress;
}

const byPath = (a: ListedFile, b: ListedFile): number => (a.path < b.path ? -1 : 1);

/** Opens a content folder: reads, parses and links it, as far as the memory does not know the outcome. */
export const openWorkspace = async ({ folder, memory, onPhotos }: OpenOptions): Promise<Workspace> => {
  const { assemble } = assembler(memory, async (path) => decodeText(await readFile(join(folder, path))));
  let listed = listFiles(folder);
  let known = rememberedFiles(folder, memory);
  let readAt = 0;

  const take = async (files: readonly ListedFile[]): Promise<Snapshot> => {
    readAt = Date.now();
    known = await knowFiles(folder, files, known, memory, onPhotos);
    listed = files;
    return assemble(known);
  };

  const relisted = (paths: readonly string[]): readonly ListedFile[] => {
    const files = new Map(listed.map((file) => [file.path, file]));
    for (const path of paths) {
      const file = listFile(folder, path);
      if (file) files.set(path, file);
      // A folder that came or went takes files with it that nobody named.
      else if (!files.delete(path)) return listFiles(folder);
    }
    return [...files.values()].sort(byPath);
  };

  let snapshot = await take(listed);
  return {
    folder,
    memory,
    snapshot: () => snapshot,
    listed: () => listed,
    update: async (paths) => {
      snapshot = await take(paths ? relisted(paths) : listFiles(folder));
      return snapshot;
    },
    remember: () => rememberFiles(folder, known as ReadonlyMap<string, KnownFile>, listed, readAt, memory),
  };
};
