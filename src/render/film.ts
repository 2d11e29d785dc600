/** A film as data: what is seen from which frame on, and the words over it. Where words stand is the room `drawing`'s affair. */
import { sha256 } from '../text/hash.ts';
import type { PictureSource } from './pictures.ts';
import { MOST_ENLARGED, TALL_PICTURE } from './tall-picture.ts';

/** How a still is gone over, slowly: nearer, farther off, or from one side to the other. */
export type FilmMove = 'nearer' | 'farther' | 'rightward' | 'leftward';

/** The owner's own filmed piece, to be seen instead of a still. */
export interface FilmTake {
  /** The cycle's id, and the file's name in its `takes/`. */
  readonly cycle: string;
  readonly name: string;
  /** Seconds from its start. */
  readonly from: number;
}

/** Words over a shot, from a frame up to but not another; frames are counted from the start of the film. */
export interface FilmWords {
  readonly from: number;
  readonly to: number;
  readonly text: string;
}

/** What is seen in a shot. */
export type FilmView =
  /** A still over the whole frame, or upon paper where it is too wide or too small for that. */
  | { readonly view: 'still'; readonly still: PictureSource; readonly move: FilmMove }
  /** Words alone, on paper. */
  | { readonly view: 'card'; readonly ground: 'paper' | 'accent' };

export interface FilmShot {
  readonly from: number;
  readonly to: number;
  readonly seen: FilmView;
  readonly take?: FilmTake;
  readonly words: readonly FilmWords[];
  /** Set below the words of a card: where the call leads, and who calls. */
  readonly under?: { readonly address: string; readonly name: string };
}

/** Colours, each `#rrggbb`. */
export interface FilmColours {
  readonly paper: string;
  readonly ink: string;
  readonly accent: string;
  readonly onAccent: string;
  /** What pictures are darkened with under words, and the words upon it. */
  readonly night: string;
  readonly onNight: string;
}

export interface Film {
  /** Pixels, both even. */
  readonly width: number;
  readonly height: number;
  /** Frames a second. */
  readonly rate: number;
  /** Frames in all. */
  readonly frames: number;
  /** BCP 47. */
  readonly lang: string;
  readonly colours: FilmColours;
  /** One after the other, without a gap. */
  readonly shots: readonly FilmShot[];
}

/** A film that a back room is to have. */
export interface FilmOutput {
  readonly where: 'backroom';
  readonly path: string;
  /** The cycle's id. */
  readonly cycle: string;
  readonly film: Film;
}

/** Upright, as phones show it; common practice, no source. */
export const FILM_SIZE = { ...TALL_PICTURE, rate: 30 } as const;

/** Of a still's width or height, what an upright frame must keep of it: else it is set on paper, whole. */
const LEAST_KEPT = 0.7;

/** Pixels that a still must have to fill a frame. */
export const leastStill = ({ width, height }: Pick<Film, 'width' | 'height'>) => ({
  width: Math.ceil(width / MOST_ENLARGED),
  height: Math.ceil(height / MOST_ENLARGED),
});

type Size = Pick<PictureSource, 'width' | 'height'>;

/** How many times a still is enlarged where it fills a frame of this size. */
export const enlargedToFill = (still: Size, frame: Size): number =>
  Math.max(frame.width / still.width, frame.height / still.height);

/** Whether a still may fill the frame: large enough, and of a shape of which enough is seen. */
export const fillsFrame = (still: Size, frame: Size): boolean => {
  const scale = enlargedToFill(still, frame);
  const kept = Math.min(frame.width / (still.width * scale), frame.height / (still.height * scale));
  return scale <= MOST_ENLARGED && kept >= LEAST_KEPT;
};

/** Raise when the same film would give other frames: films are then made anew. */
const FILM_VERSION = 3;

/**
 * What a film is known by, 64 hexadecimal digits. `fonts` is the digest of the faces that it is set in; `takes` says what
 * each take's file is as it stands, empty where takes are not cut in.
 */
export const filmKey = (film: Film, fonts: string, takes: readonly string[]): string =>
  sha256(JSON.stringify(['film', FILM_VERSION, fonts, takes, film]));
