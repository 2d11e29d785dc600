/** What a drawing shows, as data: its words and its pictures. Where they stand is the layout's affair. */
import { sha256 } from '../text/hash.ts';
import type { DrawingJob } from './output.ts';
import type { PictureSource } from './pictures.ts';

/** Sizes in pixels of what is drawn: the tall card, the pin, the square and the picture of a link preview. */
export const DRAWING_SIZES = {
  card: { width: 1080, height: 1920 },
  pin: { width: 1000, height: 1500 },
  square: { width: 1080, height: 1080 },
  share: { width: 1200, height: 630 },
} as const;

export type DrawingShape = keyof typeof DRAWING_SIZES;

/** A picture that a drawing shows. */
export type DrawnPicture = PictureSource;

export interface Drawing {
  readonly shape: DrawingShape;
  /** Pixels. */
  readonly width: number;
  readonly height: number;
  /** BCP 47: decides how words are cut, shaped and hyphenated. */
  readonly lang: string;
  readonly pictures: readonly DrawnPicture[];
}

/** Raise when the same drawing would give other pixels: drawings are then made anew. */
const DRAWING_VERSION = 1;

/** The job of a drawing. `fonts` is the digest of the faces that it is set in. */
export const drawingJob = (drawing: Drawing, fonts: string): DrawingJob => ({
  drawing,
  key: sha256(JSON.stringify(['drawing', DRAWING_VERSION, fonts, drawing])),
});
