/** Puts files beside an owner's own: all of them or none, and never one over another. */
import { constants } from 'node:fs';
import { copyFile, mkdir, readFile, rename, rm, rmdir, writeFile } from 'node:fs/promises';
import { dirname } from 'node:path';

/** What is to be put; every path is absolute. */
export interface PutPlan {
  /** Folders that are to be there, also with nothing in them. */
  readonly folders: readonly string[];
  readonly files: readonly { readonly path: string; readonly text: string }[];
  readonly copies: readonly { readonly from: string; readonly to: string }[];
  /** Files that stand there, each with the bytes that the change was made for. */
  readonly changes: readonly { readonly path: string; readonly was: Uint8Array; readonly text: string }[];
}

/** A file that somebody changed while its change was thought of. */
const changedMeanwhile = (path: string): Error =>
  Object.assign(new Error(`EBUSY: ${path} was changed by another program meanwhile`), { code: 'EBUSY' });

const replace = async (path: string, content: string | Uint8Array): Promise<void> => {
  const aside = `${path}.lidlore-new`;
  try {
    await writeFile(aside, content, { flag: 'wx' });
    await rename(aside, path);
  } catch (error) {
    await rm(aside, { force: true });
    throw error;
  }
};

/** The folders of a path that were not there and are now, the innermost last. */
const makeFolders = async (path: string): Promise<readonly string[]> => {
  const first = await mkdir(path, { recursive: true });
  if (first === undefined) return [];
  const made: string[] = [];
  for (let here = path; here.length >= first.length; here = dirname(here)) made.unshift(here);
  return made;
};

/**
 * Makes folders and files, copies, and changes. Where the disk refuses anything, or a file stands where one is to be
 * made, all that was done is undone and the error is passed on. Ctrl-C is not heard meanwhile.
 */
export const putFiles = async ({ folders, files, copies, changes }: PutPlan): Promise<void> => {
  const undo: (() => Promise<unknown>)[] = [];
  const unheard = (): void => {};
  process.on('SIGINT', unheard);
  try {
    const places = [
      ...folders,
      ...files.map(({ path }) => dirname(path)),
      ...copies.map(({ to }) => dirname(to)),
    ];
    for (const place of new Set(places))
      for (const made of await makeFolders(place)) undo.push(() => rmdir(made));
    for (const { path, text } of files) {
      // A file that was opened and not filled, because the disk is full, is ours too.
      const before = await readFile(path).catch(() => undefined);
      if (before === undefined) undo.push(() => rm(path, { force: true }));
      await writeFile(path, text, { flag: 'wx' });
    }
    for (const { from, to } of copies) {
      await copyFile(from, to, constants.COPYFILE_EXCL);
      undo.push(() => rm(to, { force: true }));
    }
    for (const { path, was, text } of changes) {
      if (Buffer.compare(await readFile(path), was) !== 0) throw changedMeanwhile(path);
      await replace(path, text);
      undo.push(() => replace(path, was));
    }
  } catch (error) {
    for (const step of undo.reverse()) await step().catch(() => undefined);
    throw error;
  } finally {
    process.off('SIGINT', unheard);
  }
};
