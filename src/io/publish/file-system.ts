/** Every call to the disk that publishing makes, as one object, so that a test can let any of them fail. */
import { lstatSync, readdirSync } from 'node:fs';
import {
  mkdir,
  open,
  readFile,
  readlink,
  realpath,
  rename,
  rmdir,
  unlink,
  utimes,
  writeFile,
} from 'node:fs/promises';
import { codeOf } from '../../text/error-code.ts';
import { printOf } from './manifest.ts';

export interface Found {
  readonly kind: 'file' | 'folder' | 'link' | 'other';
  /** Bytes. */
  readonly size: number;
  /** Its `printOf`. */
  readonly print: string;
}

export interface Listed {
  readonly name: string;
  readonly isFolder: boolean;
}

/** Rejects and throws with the system's own errors, but for what is absent where it says so. */
export interface FileSystem {
  /** What stands at a path, links not followed; undefined when nothing does. Not awaited, because a thousand awaited calls take ten times as long. */
  readonly lstat: (path: string) => Found | undefined;
  /** Entries of a folder, sorted; none where it is absent. A link is no folder. */
  readonly list: (dir: string) => readonly Listed[];
  /** Undefined when nothing is there, or a folder is. */
  readonly read: (path: string) => Promise<Uint8Array | undefined>;
  /** Makes a file that is not there yet (EEXIST where it is); it is on the disk itself when this resolves. */
  readonly write: (path: string, bytes: string | Uint8Array) => Promise<void>;
  /** Makes a small file that is not there yet; a crash of the machine may lose it. */
  readonly claim: (path: string, text: string) => Promise<void>;
  readonly rename: (from: string, to: string) => Promise<void>;
  readonly unlink: (path: string) => Promise<void>;
  readonly rmdir: (path: string) => Promise<void>;
  /** Makes a folder and those above it; the outermost that it made, if any. */
  readonly makeFolder: (path: string) => Promise<string | undefined>;
  /** Sees to it that the names in a folder are on the disk itself. */
  readonly sync: (dir: string) => Promise<void>;
  readonly realpath: (path: string) => Promise<string>;
  readonly readlink: (path: string) => Promise<string>;
  readonly touch: (path: string) => Promise<void>;
}

const isAbsent = (error: unknown): boolean => /^(ENOENT|ENOTDIR)$/.test(codeOf(error));

/** Systems that cannot sync a folder say so with one of these. */
const CANNOT_SYNC = /^(EINVAL|EISDIR|EPERM|ENOTSUP)$/;

export const disk: FileSystem = {
  lstat: (path) => {
    let found: ReturnType<typeof lstatSync>;
    try {
      found = lstatSync(path, { throwIfNoEntry: false });
    } catch (error) {
      if (isAbsent(error)) return undefined;
      throw error;
    }
    if (!found) return undefined;
    const kind = found.isFile()
      ? 'file'
      : found.isDirectory()
        ? 'folder'
        : found.isSymbolicLink()
          ? 'link'
          : 'other';
    return { kind, size: found.size, print: printOf(found) };
  },
  list: (dir) => {
    try {
      return readdirSync(dir, { withFileTypes: true })
        .map((entry) => ({ name: entry.name, isFolder: entry.isDirectory() }))
        .sort((a, b) => (a.name < b.name ? -1 : 1));
    } catch (error) {
      if (isAbsent(error)) return [];
      throw error;
    }
  },
  read: async (path) => {
    try {
      return await readFile(path);
    } catch (error) {
      if (isAbsent(error) || codeOf(error) === 'EISDIR') return undefined;
      throw error;
    }
  },
  write: (path, bytes) => writeFile(path, bytes, { flag: 'wx', flush: true }),
  claim: (path, text) => writeFile(path, text, { flag: 'wx' }),
  rename,
  unlink,
  rmdir,
  makeFolder: (path) => mkdir(path, { recursive: true }),
  sync: async (dir) => {
    try {
      const folder = await open(dir);
      try {
        await folder.sync();
      } finally {
        await folder.close();
      }
    } catch (error) {
      if (!CANNOT_SYNC.test(codeOf(error))) throw error;
    }
  },
  realpath: (path) => realpath(path),
  readlink: (path) => readlink(path),
  touch: async (path) => {
    const now = new Date();
    await utimes(path, now, now);
  },
};
