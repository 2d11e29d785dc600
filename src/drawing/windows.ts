/** How large a picture may stand. */
import type { DrawnPicture } from '../render/drawing.ts';

interface Size {
  readonly width: number;
  readonly height: number;
}

/** Below this share of the room that it was to fill, a picture is no plate but a stamp: the words stand alone. A choice of ours. */
const LEAST_SHARE = 0.3;

/** Wider or taller than this, a window shows a strip. */
const LEAST_RATIO = 0.5;
const MOST_RATIO = 2.2;

/**
 * The largest window within `room` that a picture fills without being enlarged more than `most` times; undefined where
 * that is too small to be looked at.
 */
export const windowFor = (
  { width, height }: Pick<DrawnPicture, 'width' | 'height'>,
  room: Size,
  most: number,
): Size | undefined => {
  let w = Math.min(room.width, Math.floor(width * most));
  let h = Math.min(room.height, Math.floor(height * most));
  w = Math.min(w, Math.floor(h * MOST_RATIO));
  h = Math.min(h, Math.floor(w / LEAST_RATIO));
  return w < room.width * LEAST_SHARE || h < Math.min(room.height, room.width) * LEAST_SHARE
    ? undefined
    : { width: w, height: h };
};

/** A picture taller than this for its width leaves no room for words; a lower one may be cut at its sides to be this high. */
const TALLEST = 1.25;
const LOWEST = 0.86;

/** Pixels that pictures side by side are high at most, each so wide: about as high as they are themselves, so that little is cut at their sides. */
export const tallestOf = (
  pictures: readonly Pick<DrawnPicture, 'width' | 'height'>[],
  width: number,
): number =>
  Math.round(width * Math.min(TALLEST, Math.max(LOWEST, ...pictures.map((one) => one.height / one.width))));

/** Pixels that one picture, and each of two, is high at least: a lower strip shows no thing whole, and is left out for the words' sake. */
export const leastHeight = (pictures: number): number => (pictures === 1 ? 360 : 220);
