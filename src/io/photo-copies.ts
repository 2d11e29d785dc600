/** Photos as drawings use them: decoded once for the few drawings in a row that show the same. */
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import sharp, { type Sharp } from 'sharp';
import type { Attention } from './attention.ts';
import { openPhoto } from './open-photo.ts';
import { attentionIn } from './photo-attention.ts';

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

const copyOf = async (path: string): Promise<PhotoCopy> => {
  const opened = await openPhoto(await readFile(path));
  if ('problem' in opened) throw new Error(`A photo that was whole ${opened.problem}: ${path}`);
  const { data, info } = await opened.photo
    .resize(LONGEST, LONGEST, { fit: 'inside', withoutEnlargement: true })
    .flatten({ background: '#ffffff' })
    .toColourspace('srgb')
    .raw({ depth: 'uchar' })
    .toBuffer({ resolveWithObject: true });
  const { width, height, channels } = info;
  const image = (): Sharp => sharp(data, { raw: { width, height, channels } });
  return { image, width, height, attention: await attentionIn(image()) };
};

/** Gives a photo's copy by its path in the content folder. */
export const photoCopies = (content: string): ((source: string) => Promise<PhotoCopy>) => {
  const held = new Map<string, Promise<PhotoCopy>>();
  return (source) => {
    const copy = held.get(source) ?? copyOf(join(content, source));
    held.delete(source);
    held.set(source, copy);
    for (const oldest of held.keys()) {
      if (held.size <= HELD) break;
      held.delete(oldest);
    }
    return copy;
  };
};
