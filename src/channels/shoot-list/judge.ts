/** Whether a photo serves the pieces that want it: its size, its shape, its sharpness. */
import type { Piece } from '../../model/box.ts';
import { LEAST_SHARE } from '../../model/picture-findings.ts';
import type { Need, Size } from './needs.ts';

/** What is judged of a photo. `sharpness` as `io/sharpness.ts` measures it; absent where nobody looked. */
export interface JudgedPhoto extends Size {
  readonly sharpness?: number | undefined;
}

/**
 * Sharpness below which a photo is blurred, and below which it may be. Chosen on half of 78 pictures and of copies of
 * them, 1600 pixels long, blurred by Gaussians. On the other half, 39 pictures: of the sharp ones none is called
 * blurred and two are doubtful; with a sigma of 2 pixels 9 are blurred, 22 doubtful and 8 pass; with 3 pixels 34 are
 * blurred and 5 doubtful; with 4 pixels 38 and 1.
 */
const BLURRED = 60;
const DOUBTFUL = 200;

/** How sharp a photo is; `unknown` where nobody looked. */
export type Sharpness = 'sharp' | 'doubtful' | 'blurred' | 'unknown';

/** What is wrong with a photo for some of the pieces. `shown`: what is left of it in the piece's shape, in pixels. */
export type Fault =
  | { readonly kind: 'shape' }
  | { readonly kind: 'small'; readonly shown: Size; readonly wanted: Size }
  | { readonly kind: 'blurred' };

export interface Judgement {
  readonly sharpness: Sharpness;
  readonly faults: readonly Fault[];
  /** Pieces that it does not serve, in their order; none for a photo without fault. */
  readonly unserved: readonly Piece[];
}

/** How sharp a photo is. */
export const sharpnessOf = ({ sharpness }: JudgedPhoto): Sharpness => {
  if (sharpness === undefined) return 'unknown';
  if (sharpness < BLURRED) return 'blurred';
  return sharpness < DOUBTFUL ? 'doubtful' : 'sharp';
};

/** The largest part of a photo in a shape, in whole pixels. */
const partIn = (photo: Size, { width, height }: Size): Size => {
  const share = Math.min(photo.width / width, photo.height / height);
  return { width: Math.round(width * share), height: Math.round(height * share) };
};

const shareOf = (part: Size, whole: Size): number =>
  (part.width * part.height) / Math.max(1, whole.width * whole.height);

/** How a photo serves what is wanted. */
export const judge = (photo: JudgedPhoto, need: Need): Judgement => {
  const sharpness = sharpnessOf(photo);
  const faults: Fault[] = [];
  const unserved: Piece[] = [];
  for (const { piece, size, least } of need.uses) {
    const shown = partIn(photo, size);
    if (shareOf(shown, photo) < LEAST_SHARE) {
      if (!faults.some(({ kind }) => kind === 'shape')) faults.push({ kind: 'shape' });
    } else if (shown.width < least.width) {
      // Of several pieces the one that asks most.
      const before = faults.findIndex(({ kind }) => kind === 'small');
      const fault: Fault = { kind: 'small', shown, wanted: least };
      const known = faults[before];
      if (known?.kind !== 'small') faults.push(fault);
      else if (known.wanted.width < least.width) faults[before] = fault;
    } else if (sharpness !== 'blurred') continue;
    if (!unserved.includes(piece)) unserved.push(piece);
  }
  if (sharpness === 'blurred') faults.push({ kind: 'blurred' });
  return { sharpness, faults, unserved };
};
