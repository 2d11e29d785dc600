/** Sees to it that every picture that a build wants is remembered, and makes those that are not. */
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { DrawingJob, PictureJob } from '../render/output.ts';
import type { Asset } from '../render/templates.ts';
import { mapConcurrently } from './map-concurrently.ts';
import type { RememberedPictures } from './memory/remembered-pictures.ts';

/** Photos decoded at once: one for each of two processors. */
const PHOTOS_AT_ONCE = 2;

/** How many of the missing pictures are made, and how many there are. */
export type PictureProgress = (done: number, total: number) => void;

/** What pictures are made from. */
export interface PictureGround {
  /** The folder that holds the photos. */
  readonly content: string;
  /** Files of the templates; the faces that drawings are set in are among them. */
  readonly assets: readonly Asset[];
}

const bySource = (jobs: readonly PictureJob[]): ReadonlyMap<string, readonly PictureJob[]> => {
  const photos = new Map<string, PictureJob[]>();
  for (const job of jobs) {
    const ofPhoto = photos.get(job.source);
    if (ofPhoto) ofPhoto.push(job);
    else photos.set(job.source, [job]);
  }
  return photos;
};

const isDrawing = (job: PictureJob | DrawingJob): job is DrawingJob => 'drawing' in job;

/**
 * Makes these pictures. Each is remembered as soon as it is made. Rejects with a `photoFailure` where a photo cannot be
 * decoded.
 */
export type MakePictures = (
  ground: PictureGround,
  jobs: readonly (PictureJob | DrawingJob)[],
  memory: Pick<RememberedPictures, 'keep'>,
  onProgress?: PictureProgress,
) => Promise<void>;

/** Does so here. */
export const makeRemembered: MakePictures = async (
  { content, assets },
  jobs,
  memory,
  onProgress = () => {},
) => {
  if (jobs.length === 0) return;
  let done = 0;
  const keep = (job: PictureJob | DrawingJob, picture: Uint8Array): void => {
    memory.keep(job.key, picture);
    onProgress(++done, jobs.length);
  };
  const drawings = jobs.filter(isDrawing);
  const photos = bySource(jobs.filter((job): job is PictureJob => !isDrawing(job)));
  if (photos.size > 0) {
    const { makePictures } = await import('./make-picture.ts');
    await mapConcurrently(PHOTOS_AT_ONCE, [...photos], async ([source, ofPhoto]) => {
      await makePictures(await readFile(join(content, source)), ofPhoto, async (job, picture) =>
        keep(job, picture),
      );
    });
  }
  if (drawings.length > 0) {
    const { openDrawingTable } = await import('./make-drawing.ts');
    const draw = await openDrawingTable({ content, assets });
    await mapConcurrently(PHOTOS_AT_ONCE, drawings, async (job) => keep(job, await draw(job.drawing)));
  }
};
