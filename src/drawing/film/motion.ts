/** Slow moves over a still: which part of it is seen in which frame. */
import type { FilmMove } from '../../render/film.ts';

/** A part of a still, in its own pixels; not whole ones, so that a slow move does not stutter. */
export interface Part {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

interface Size {
  readonly width: number;
  readonly height: number;
}

/** How much nearer a move goes at most. A choice of ours, no source: more is felt as a jump. */
export const NEAREST = 1.12;
/** How much nearer it goes in a second at most, and how many widths of the frame it goes sideways. */
const NEARER_A_SECOND = 0.025;
const SIDEWAYS_A_SECOND = 0.075;

/** Share of the mean speed that a move begins and ends with: it never stands still, and never starts with a jerk. */
const AT_THE_ENDS = 0.4;

/** The share of a move that is done at a share of its time, both from 0 to 1: slow, faster, slow. */
export const eased = (time: number): number =>
  time - ((1 - AT_THE_ENDS) * Math.sin(2 * Math.PI * time)) / (2 * Math.PI);

const between = (low: number, value: number, high: number): number => Math.min(high, Math.max(low, value));

/**
 * The part of a still that is seen at a share of a shot's time. `nearest` (1 to `NEAREST`) says how near the still may be
 * seen without being enlarged too much; the part has the frame's shape, and lies within the still.
 */
export const partAt = (
  move: FilmMove,
  time: number,
  {
    still,
    frame,
    nearest,
    seconds,
    around = { x: 0.5, y: 0.5 },
  }: {
    readonly still: Size;
    readonly frame: Size;
    readonly nearest: number;
    readonly seconds: number;
    readonly around?: { readonly x: number; readonly y: number };
  },
): Part => {
  const done = eased(time);
  const near = Math.min(nearest - 1, NEARER_A_SECOND * seconds);
  const sideways = move === 'rightward' || move === 'leftward';
  const zoom = 1 + near * (sideways ? 0.5 : move === 'farther' ? 1 - done : done);
  const ratio = frame.width / frame.height;
  const widest = Math.min(still.width, still.height * ratio);
  const width = widest / zoom;
  // Dividing and multiplying by the ratio can give a hair more than the still has.
  const height = Math.min(still.height, width / ratio);
  const room = still.width - width;
  const way = sideways ? Math.min(room, SIDEWAYS_A_SECOND * seconds * width) : 0;
  // The way lies around the point that matters, as far as the still goes on to both sides.
  const middle = between(way / 2, around.x * still.width - width / 2, room - way / 2);
  const side = move === 'rightward' ? done - 0.5 : 0.5 - done;
  return {
    x: between(0, middle + way * side, room),
    y: between(0, around.y * still.height - height / 2, still.height - height),
    width,
    height,
  };
};
