/** Published pictures, kept between runs under a key that says all that went into them. */
import { mkdir, readdir, readFile, rename, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { PictureJob } from '../render/output.ts';
import { mapConcurrently } from './map-concurrently.ts';

/** Photos decoded at once: one for each of two processors. */
const PHOTOS_AT_ONCE = 2;

export interface CachedPictures {
  /** Absolute path of a job's picture. */
  readonly fileOf: (job: PictureJob) => string;
  readonly made: number;
  readonly fromCache: number;
}

/**
 * Sees to it that every job's picture is in `cache`, making those that are not; `contentDir` holds the
 * photos. `onProgress` hears how many of the missing ones are made.
 */
export const cachePictures = async (
  contentDir: string,
  cache: string,
  jobs: readonly PictureJob[],
  onProgress: (done: number, total: number) => void = () => {},
): Promise<CachedPictures> => {
  const folder = join(cache, 'pictures');
  await mkdir(folder, { recursive: true });
  const there = new Set(await readdir(folder));
  const wanted = new Map(jobs.map((job) => [job.key, job]));
  const missing = [...wanted].filter(([key]) => !there.has(key)).map(([, job]) => job);
  const byPhoto = new Map<string, PictureJob[]>();
  for (const job of missing) byPhoto.set(job.source, [...(byPhoto.get(job.source) ?? []), job]);

  if (missing.length > 0) {
    const { makePictures } = await import('./make-picture.ts');
    let done = 0;
    await mapConcurrently(PHOTOS_AT_ONCE, [...byPhoto], async ([source, ofPhoto]) => {
      await makePictures(await readFile(join(contentDir, source)), ofPhoto, async (job, picture) => {
        const file = join(folder, job.key);
        // Written aside first: a run that is stopped must not leave half a picture under a good key.
        await writeFile(`${file}.${process.pid}`, picture);
        await rename(`${file}.${process.pid}`, file);
        onProgress(++done, missing.length);
      });
    });
  }
  return {
    fileOf: (job) => join(folder, job.key),
    made: missing.length,
    fromCache: wanted.size - missing.length,
  };
};
