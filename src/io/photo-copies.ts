/** Photos as drawings use them: decoded once for the few drawings in a row that show the same. */
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import sharp, { type Sharp } from 'sharp';
import type { Attention } from './attention.ts';
import { openPhoto, problemOf, SECONDS_TO_MAKE } from './open-photo.ts';
import { attentionIn } from './photo-attention.ts';
import { photoFailure } from './photo-problem.ts';

/** A photo in sRGB, and where its things are. */
export interface PhotoCopy {
  /** Starts from the pixels anew each time: an instance of sharp remembers earlier calls. */
  readonly image: () => Sharp;
  readonly width: number;
  readonly height: number;
  readonly attention: Attention;
}

/** Pixels of the longer side: enough that the tallest window takes a half of a photo without enlarging it. */
const LONGEST = 3000;

/** Copies that are held: a sheet of two things, in three shapes, and the next one. */
const HELD = 4;

const copyOf = async (content: string, source: string): Promise<PhotoCopy> => {
  const opened = await openPhoto(await readFile(join(content, source)), SECONDS_TO_MAKE);
  if ('problem' in opened) throw photoFailure(source, opened);
  const { data, info } = await opened.photo
    .resize(LONGEST, LONGEST, { fit: 'inside', withoutEnlargement: true })
    .flatten({ background: '#ffffff' })
    .toColourspace('srgb')
    .raw({ depth: 'uchar' })
    .toBuffer({ resolveWithObject: true })
    .catch((error: unknown) => {
      throw photoFailure(source, problemOf(error));
    });
  const { width, height, channels } = info;
  const image = (): Sharp => sharp(data, { raw: { width, height, channels } });
  return { image, width, height, attention: await attentionIn(image()) };
};

/** Gives a photo's copy by its path in the content folder. */
export const photoCopies = (content: string): ((source: string) => Promise<PhotoCopy>) => {
  const held = new Map<string, Promise<PhotoCopy>>();
  return (source) => {
    const copy = held.get(source) ?? copyOf(content, source);
    held.delete(source);
    held.set(source, copy);
    for (const oldest of held.keys()) {
      if (held.size <= HELD) break;
      held.delete(oldest);
    }
    return copy;
  };
};
