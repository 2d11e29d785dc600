/**
 * Which part of a photo is shown where another shape is wanted: the one rule for the site's pictures, for cards and
 * for the film. Pure mathematics; all lengths are pixels of the photo that is cropped.
 */
import type { Attention } from './attention.ts';

/** A length and its height, in pixels. */
export interface Size {
  readonly width: number;
  readonly height: number;
}

/** A part of a photo, in whole pixels, all of it within. */
export interface CropWindow extends Size {
  readonly left: number;
  readonly top: number;
}

/** What a crop keeps: the point of `focus` (shares from 0 to 1) or, without one, what the photo's map shows. */
export interface CropBy {
  readonly focus?: { readonly x: number; readonly y: number } | undefined;
  readonly attention?: Attention | undefined;
}

/**
 * What a cut through a thing costs, in shares of all that is to be kept, where it goes through as much as lies in an
 * average line. Chosen, as `FROM_MIDDLE`, on half of 36 photos marked by hand and on views of them in which the thing
 * stands at a side; the other half was tried once.
 */
const CUT = 0.2;
/** What it costs when the window's middle is half the photo away from the photo's; grows as the square. */
const FROM_MIDDLE = 1;
/** Share of the photo on either side of a cut that counts as cut through: a thing is not to touch the edge. */
const CUT_BAND = 0.02;
/** Places that are tried from one end to the other: an even number, so that the very middle is one. */
const PLACES = 200;

/** Largest part of a photo with the shape `ratio` (width over height), in pixels. */
export const partSize = (photo: Size, ratio: number): Size =>
  photo.width / photo.height > ratio
    ? { width: Math.min(photo.width, Math.max(1, Math.round(photo.height * ratio))), height: photo.height }
    : { width: photo.width, height: Math.min(photo.height, Math.max(1, Math.round(photo.width / ratio))) };

const between = (low: number, value: number, high: number): number => Math.min(high, Math.max(low, value));

/** Start of a part `length` long that has the point `focus` (share of the whole) as near its middle as can be. */
const startAround = (focus: number, length: number, whole: number): number =>
  between(0, Math.round(focus * whole - length / 2), whole - length);

/** All of the map's attention in each column (`across`) or row. */
const profileOf = ({ width, height, weights }: Attention, across: boolean): Float64Array => {
  const profile = new Float64Array(across ? width : height);
  weights.forEach((weight, i) => {
    const at = across ? i % width : Math.floor(i / width);
    profile[at] = (profile[at] as number) + weight;
  });
  return profile;
};

/** How much of a profile lies before a place (share from 0 to 1), as a share of all. */
const heldBefore = (profile: Float64Array): ((place: number) => number) => {
  const sums = new Float64Array(profile.length + 1);
  profile.forEach((held, i) => {
    sums[i + 1] = (sums[i] as number) + held;
  });
  const all = sums[profile.length] as number;
  return (place) => {
    const whole = Math.min(profile.length - 1, Math.floor(place * profile.length));
    const rest = place * profile.length - whole;
    return ((sums[whole] as number) + rest * (profile[whole] as number)) / all;
  };
};

/**
 * Where a part begins that is `length` of the whole (shares from 0 to 1) along one side: where it keeps most of what
 * the map shows, cuts through least of it and is nearest the middle. The middle where the map shows nothing.
 */
const bestStart = (attention: Attention | undefined, across: boolean, length: number): number => {
  const room = 1 - length;
  const profile = attention ? profileOf(attention, across) : new Float64Array();
  if (!profile.some((held) => held > 0)) return room / 2;
  const before = heldBefore(profile);
  /** How much lies around a cut, in shares of what lies around an average one. */
  const cutAt = (place: number): number => {
    const from = Math.max(0, place - CUT_BAND);
    const to = Math.min(1, place + CUT_BAND);
    return (before(to) - before(from)) / (to - from);
  };
  let best = { start: room / 2, worth: Number.NEGATIVE_INFINITY };
  for (let i = 0; i <= PLACES; i++) {
    const start = (room * i) / PLACES;
    const kept = before(start + length) - before(start);
    const cut = (i > 0 ? cutAt(start) : 0) + (i < PLACES ? cutAt(start + length) : 0);
    const worth = kept - CUT * cut - FROM_MIDDLE * (2 * start - room) ** 2;
    if (worth > best.worth) best = { start, worth };
  }
  return best.start;
};

/**
 * The largest part of a photo that has the shape `ratio` (width over height). With a focus its point is as near the
 * part's middle as can be. Without one the part keeps whole what the map of attention shows, where the shape allows
 * it, and is otherwise as near the photo's middle as can be; without a map it is the very middle.
 */
export const cropWindow = (photo: Size, ratio: number, { focus, attention }: CropBy): CropWindow => {
  const part = partSize(photo, ratio);
  if (focus)
    return {
      left: startAround(focus.x, part.width, photo.width),
      top: startAround(focus.y, part.height, photo.height),
      ...part,
    };
  const start = (across: boolean, length: number, whole: number): number =>
    length === whole
      ? 0
      : between(0, Math.round(bestStart(attention, across, length / whole) * whole), whole - length);
  return {
    left: start(true, part.width, photo.width),
    top: start(false, part.height, photo.height),
    ...part,
  };
};
