/** Sees to it that every picture that a build wants is remembered, and makes those that are not. */
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { PictureJob } from '../render/output.ts';
import { mapConcurrently } from './map-concurrently.ts';
import type { RememberedPictures } from './memory/remembered-pictures.ts';

/** Photos decoded at once: one for each of two processors. */
const PHOTOS_AT_ONCE = 2;

/** How many of the missing pictures are made, and how many there are. */
export type PictureProgress = (done: number, total: number) => void;

const bySource = (jobs: readonly PictureJob[]): ReadonlyMap<string, readonly PictureJob[]> => {
  const photos = new Map<string, PictureJob[]>();
  for (const job of jobs) {
    const ofPhoto = photos.get(job.source);
    if (ofPhoto) ofPhoto.push(job);
    else photos.set(job.source, [job]);
  }
  return photos;
};

/** Makes these pictures; `content` is the folder that holds the photos. Each is remembered as soon as it is made. */
export const makeRemembered = async (
  content: string,
  jobs: readonly PictureJob[],
  memory: RememberedPictures,
  onProgress: PictureProgress = () => {},
): Promise<void> => {
  if (jobs.length === 0) return;
  const { makePictures } = await import('./make-picture.ts');
  let done = 0;
  await mapConcurrently(PHOTOS_AT_ONCE, [...bySource(jobs)], async ([source, ofPhoto]) => {
    await makePictures(await readFile(join(content, source)), ofPhoto, async (job, picture) => {
      memory.keep(job.key, picture);
      onProgress(++done, jobs.length);
    });
  });
};
