/** What a drawing shows, as data: its words and its pictures. Where they stand is the layout's affair. */
import { sha256 } from '../text/hash.ts';
import type { Scheme } from './colours.ts';
import type { DrawingJob } from './output.ts';
import type { PictureSource } from './pictures.ts';
import { COVERED, MOST_ENLARGED, TALL_PICTURE } from './tall-picture.ts';

/** Sizes in pixels of what is drawn: the tall card, the pin, the square and the picture of a link preview. */
export const DRAWING_SIZES = {
  card: TALL_PICTURE,
  pin: { width: 1000, height: 1500 },
  square: { width: 1080, height: 1080 },
  share: { width: 1200, height: 630 },
} as const;

export type DrawingShape = keyof typeof DRAWING_SIZES;

/**
 * Pixels at the head and the foot of a drawing that no word stands in. A tall card's are covered by the apps' own
 * controls; the others keep a margin.
 */
export const SAFE_AREAS: Readonly<Record<DrawingShape, { readonly top: number; readonly bottom: number }>> = {
  card: COVERED,
  pin: { top: 72, bottom: 72 },
  square: { top: 72, bottom: 72 },
  share: { top: 56, bottom: 56 },
};

/** Least height of capitals in the smallest words of a card 1920 pixels tall: what a phone can be read at. Common practice, no source. */
export const LEAST_CAPITALS = 34;

/** A picture that a drawing shows. */
export type DrawnPicture = PictureSource;

/** What has to be said of a thing that can hurt somebody. */
export interface DrawnCaution {
  readonly label: string;
  readonly text: string;
}

/** One thing of a drawing with its words. */
export interface DrawnEntry {
  /** Short: what number it has, or which box it is of. */
  readonly label: string;
  readonly name: string;
  /** Whole sentences of which one is shown: the first that there is room for. */
  readonly lines: readonly string[];
  /** How it goes with the others; a whole sentence. */
  readonly relation?: string;
  /** Never left out. */
  readonly cautions: readonly DrawnCaution[];
  /** Its place among the drawing's pictures; absent where there is none. */
  readonly picture?: number;
}

export interface Drawing {
  readonly shape: DrawingShape;
  /** Pixels. */
  readonly width: number;
  readonly height: number;
  readonly safe: { readonly top: number; readonly bottom: number };
  readonly layout: 'plate' | 'broadside';
  /** BCP 47: decides how words are cut, shaped and hyphenated. */
  readonly lang: string;
  readonly colours: Pick<Scheme, 'paper' | 'wash' | 'ink' | 'soft' | 'accent' | 'onAccent' | 'hair'>;
  /** The cycle's own colours as they were chosen, for ornaments that no word stands on. */
  readonly palette: readonly string[];
  /** One or two. */
  readonly entries: readonly DrawnEntry[];
  /** What to do now, in large type. `address` as it is said. */
  readonly call?: { readonly text: string; readonly address: string };
  readonly pictures: readonly DrawnPicture[];
  /** How many times its own pixels a picture may be enlarged. */
  readonly mostEnlarged: number;
  readonly leastCapitals: number;
}

/**
 * Raise when the same drawing would give other pixels: drawings are then made anew. The second is of those
 * that have no picture at all, which are made in another way (`isOfWords` in drawing/lay-out.ts): those with pictures take
 * long, and need not be made anew for a change of it.
 */
const DRAWING_VERSION = 2;
const WORDS_VERSION = 3;

/** The faces that drawings are set in, as far as whoever describes a drawing asks about them. */
export interface DrawingFaces {
  /** Of all their files: another face gives other drawings. */
  readonly digest: string;
  /** Letters of a text that no face has, each once; `lang` in BCP 47. */
  readonly lacking: (text: string, lang: string) => Promise<readonly string[]>;
}

/** What of a picture its drawing depends on. */
export const drawnPicture = ({ file, hash, width, height, focus }: PictureSource): DrawnPicture => ({
  file,
  hash,
  width,
  height,
  ...(focus && { focus }),
});

/** What a shape's drawing begins with. */
export const drawingFor = (
  shape: DrawingShape,
  rest: Omit<Drawing, 'shape' | 'width' | 'height' | 'safe' | 'mostEnlarged' | 'leastCapitals'>,
): Drawing => ({
  shape,
  ...DRAWING_SIZES[shape],
  safe: SAFE_AREAS[shape],
  mostEnlarged: MOST_ENLARGED,
  leastCapitals: LEAST_CAPITALS,
  ...rest,
});

/** The job of a drawing that is set in some faces. */
export const drawingJob = (drawing: Drawing, faces: Pick<DrawingFaces, 'digest'>): DrawingJob => ({
  drawing,
  key: sha256(
    JSON.stringify([
      'drawing',
      drawing.pictures.length === 0 ? WORDS_VERSION : DRAWING_VERSION,
      faces.digest,
      drawing,
    ]),
  ),
});
