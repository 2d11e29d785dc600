/** How a picture's making is known: one key for its published name, for what is kept of it, and for telling two apart. */
import { sha256 } from '../text/hash.ts';
import type { PictureJob } from './output.ts';

/** Raise when the same job would give other bytes, as with another quality: pictures are then made anew, by other names. */
export const RECIPE_VERSION = 3;

/** SHA-256 of all that goes into a picture, 64 hexadecimal digits: photo, size, crop, format, mark and recipe. */
export const jobKey = ({ hash, width, height, focus, format, mark }: Omit<PictureJob, 'key'>): string =>
  sha256(
    JSON.stringify([
      RECIPE_VERSION,
      hash,
      width,
      height,
      focus?.x,
      focus?.y,
      format,
      ...(mark ? [mark] : []),
    ]),
  );
