/** Files as data. Channels describe them, one place writes them, and only when nothing must be fixed. */
import type { Drawing } from './drawing.ts';
import type { FilmOutput } from './film.ts';

/** `site` is public; `backroom` is private and never published. */
export type Where = 'site' | 'backroom';

/** How one published picture is made from one photo. */
export interface PictureJob {
  /** Path of the photo in the content folder. */
  readonly source: string;
  /** SHA-256 of the photo's bytes. */
  readonly hash: string;
  /** Pixels of the published picture; the photo is cropped to this shape, never stretched or enlarged. */
  readonly width: number;
  readonly height: number;
  /** The point to keep when cropping (shares from 0 to 1); without it what stands out is kept whole, near the middle. */
  readonly focus?: { readonly x: number; readonly y: number };
  readonly format: 'avif' | 'webp' | 'jpeg' | 'png';
  /** Drawn over the middle: `play` says that the picture leads to a film. */
  readonly mark?: 'play';
  /** Stands for all that the file is made of: see `jobKey`. Jobs of one key give the same bytes. */
  readonly key: string;
}

/** How one drawing is made: a JPEG of words and pictures set together, laid out by the room `drawing`. */
export interface DrawingJob {
  readonly drawing: Drawing;
  /** Stands for all that the file is made of, as a picture's does. */
  readonly key: string;
}

/** A picture to be made, of one photo or drawn. */
export interface PictureOutput<Job extends PictureJob | DrawingJob = PictureJob | DrawingJob> {
  readonly where: Where;
  readonly path: string;
  readonly picture: Job;
}

/**
 * When a file is put in its place: what pages load first, then pages, then what lists pages, so that no page and no list
 * ever names what is not there.
 */
export type Step = 'asset' | 'page' | 'list';

/** What making a document gave: its content, and the pictures that its markup names. */
export interface MadeDocument<Finding> {
  readonly content: string | Uint8Array;
  readonly pictures?: readonly PictureOutput[];
  /** Films that go with it. */
  readonly films?: readonly FilmOutput[];
  /** What was found in an author's words on the way. */
  readonly diagnostics?: readonly Finding[];
}
