/** Sees to it that every picture that a build wants is remembered, and makes those that are not. */
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { PictureJob } from '../render/output.ts';
import { mapConcurrently } from './map-concurrently.ts';
import type { RememberedPictures } from './memory/remembered-pictures.ts';

/** Photos decoded at once: one for each of two processors. */
const PHOTOS_AT_ONCE = 2;

export interface WantedPicture {
  readonly key: string;
  readonly job: PictureJob;
}

/** How many of the missing pictures are made, and how many there are. */
export type PictureProgress = (done: number, total: number) => void;

const bySource = (pictures: readonly WantedPicture[]): ReadonlyMap<string, readonly WantedPicture[]> => {
  const photos = new Map<string, WantedPicture[]>();
  for (const picture of pictures) {
    const of = photos.get(picture.job.source);
    if (of) of.push(picture);
    else photos.set(picture.job.source, [picture]);
  }
  return photos;
};

/** Makes these pictures; `content` is the folder that holds the photos. Each is remembered as soon as it is made. */
export const makeRemembered = async (
  content: string,
  pictures: readonly WantedPicture[],
  memory: RememberedPictures,
  onProgress: PictureProgress = () => {},
): Promise<void> => {
  if (pictures.length === 0) return;
  const { makePictures } = await import('./make-picture.ts');
  let done = 0;
  await mapConcurrently(PHOTOS_AT_ONCE, [...bySource(pictures)], async ([source, wanted]) => {
    const keys = new Map(wanted.map(({ job, key }) => [job, key]));
    await makePictures(
      await readFile(join(content, source)),
      wanted.map(({ job }) => job),
      async (job, picture) => {
        memory.keep(keys.get(job) ?? '', picture);
        onProgress(++done, pictures.length);
      },
    );
  });
};
