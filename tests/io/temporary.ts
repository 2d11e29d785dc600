import { existsSync } from 'node:fs';
import { mkdir, mkdtemp, readFile, rm, symlink, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { inject, onTestFinished } from 'vitest';
import { listFiles } from '../../src/io/list-files.ts';

/** Memory rather than a disk where the system has one: for what publishes again and again, because each publish syncs. */
export const QUICK_DISK = existsSync('/dev/shm') ? '/dev/shm' : tmpdir();

/** A folder that is gone when the test is over, with these files in it. */
export const temporary = async (files: Record<string, string | Uint8Array> = {}): Promise<string> => {
  const dir = await mkdtemp(join(tmpdir(), 'lidlore-'));
  onTestFinished(() => rm(dir, { recursive: true, force: true }));
  await writeFiles(dir, files);
  return dir;
};

/**
 * A folder that is gone when the test is over, with the files of a box whose pictures nobody looks at: what any test has
 * made of the same photo by the same recipe is not made again. Pictures are named by all that they are made from, and
 * their own tests make them anew.
 */
export const temporaryBox = async (files: Record<string, string | Uint8Array>): Promise<string> => {
  const dir = await temporary(files);
  await sharePictures(dir);
  return dir;
};

/** Gives a box the pictures that others have made, before its first build. */
export const sharePictures = async (dir: string): Promise<void> => {
  await mkdir(join(dir, '.lidlore'), { recursive: true });
  await symlink(inject('readyPictures'), join(dir, '.lidlore/pictures'));
};

export const writeFiles = async (dir: string, files: Record<string, string | Uint8Array>): Promise<void> => {
  for (const [path, content] of Object.entries(files)) {
    await mkdir(dirname(join(dir, path)), { recursive: true });
    await writeFile(join(dir, path), content);
  }
};

/** Every file below a folder with its bytes as text, hidden ones apart. */
export const contents = async (dir: string): Promise<Record<string, string>> =>
  Object.fromEntries(
    await Promise.all(
      listFiles(dir).map(
        async ({ path }) => [path, (await readFile(join(dir, path))).toString('latin1')] as const,
      ),
    ),
  );
