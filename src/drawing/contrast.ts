/**
 * Contrast of words with what lies under them (WCAG 2.2, 1.4.3 and its definitions of relative luminance and contrast
 * ratio), and the colours and the strength of melting that reach it.
 */
import type { Drawing } from '../render/drawing.ts';
import type { Melt, Sheet, Tones } from './sheet.ts';

export type Rgb = readonly [number, number, number];

/** WCAG 2.2, 1.4.3: 4.5 to 1, and a little more, because JPEG moves colours by a step or two. */
export const TEXT_CONTRAST = 4.5;
const AIM = 4.9;
/** What words on a plain ground of a picture's colour have: all of it is ours to choose. WCAG 2.2, 1.4.6. */
const GROUND_CONTRAST = 7;

/** Stronger than this, melting hides what it melts: less than a third of the picture is left. A choice of ours. */
const MOST_MELTED = 0.68;

const channel = (value: number): number => {
  const share = value / 255;
  return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
};

/** Of each of the 256 levels, because it is asked for every pixel. */
const LINEAR = Float64Array.from({ length: 256 }, (_, level) => channel(level));
const linear = (value: number): number => LINEAR[Math.max(0, Math.min(255, Math.round(value)))] as number;

/** Relative luminance, 0 to 1. */
export const luminance = ([r, g, b]: Rgb): number =>
  0.2126 * linear(r) + 0.7152 * linear(g) + 0.0722 * linear(b);

/** Contrast ratio of two colours, 1 to 21. */
export const contrastOf = (a: Rgb, b: Rgb): number => {
  const [one, other] = [luminance(a), luminance(b)];
  return (Math.max(one, other) + 0.05) / (Math.min(one, other) + 0.05);
};

export const rgbOf = (hex: string): Rgb => {
  const value = Number.parseInt(hex.slice(1), 16);
  return [(value >> 16) & 255, (value >> 8) & 255, value & 255];
};

const hexOf = (colour: Rgb): string =>
  `#${colour.map((value) => Math.round(value).toString(16).padStart(2, '0')).join('')}`;

/** `share` of the second colour over the first. */
export const mixed = (under: Rgb, over: Rgb, share: number): Rgb => [
  under[0] + (over[0] - under[0]) * share,
  under[1] + (over[1] - under[1]) * share,
  under[2] + (over[2] - under[2]) * share,
];

/** The colour moved towards an end by as little as reaches `least` against `words`. */
const movedTo = (colour: Rgb, end: Rgb, words: Rgb, least: number): Rgb => {
  for (let share = 0; share < 1; share += 0.02) {
    const moved = mixed(colour, end, share);
    if (contrastOf(moved, words) >= least) return moved;
  }
  return end;
};

/** Colours of a sheet whose ground goes on from a picture: the picture's own, and dark or light words by what it needs less of. */
const tonesFrom = (foot: Rgb, { ink, paper }: Drawing['colours']): Tones => {
  const [dark, light] = [rgbOf(ink), rgbOf(paper)];
  const isLight = contrastOf(foot, dark) >= contrastOf(foot, light);
  const words = isLight ? dark : light;
  const ground = movedTo(foot, isLight ? [255, 255, 255] : [0, 0, 0], words, GROUND_CONTRAST);
  return {
    ground: hexOf(ground),
    ink: hexOf(words),
    soft: hexOf(mixed(words, ground, 0.5)),
    accent: hexOf(words),
    wash: hexOf(ground),
    hair: hexOf(mixed(words, ground, 0.7)),
  };
};

/** A sheet's colours; `foot` is the mean colour of its pictures' feet. */
export const tonesFor = (
  { ground }: Pick<Sheet, 'ground'>,
  { colours }: Pick<Drawing, 'colours'>,
  foot: Rgb,
): Tones => {
  if (ground === 'picture') return tonesFrom(foot, colours);
  const { paper, wash, ink, soft, accent, onAccent, hair } = colours;
  if (ground === 'paper') return { ground: paper, ink, soft, accent, wash, hair };
  return { ground: accent, ink: onAccent, soft: onAccent, accent: onAccent, wash: accent, hair: onAccent };
};

const smooth = (share: number): number => {
  const within = Math.min(1, Math.max(0, share));
  return within * within * (3 - 2 * within);
};

/** How much of the ground lies over the picture in a row: none above the melting, `strength` at the words, all at its end. */
export const meltedAt = ({ begin, words, end }: Melt, strength: number, y: number): number =>
  y < words
    ? strength * smooth((y - begin) / Math.max(1, words - begin))
    : strength + (1 - strength) * smooth((y - words) / Math.max(1, end - words));

/** A pixel under a letter, with its row. */
export interface SampledPixel {
  readonly colour: Rgb;
  readonly y: number;
}

/**
 * The least strength with which every one of the pixels under the letters, the worst too, has the contrast; undefined
 * where that would hide the picture.
 */
export const meltStrength = (
  melt: Melt,
  pixels: readonly SampledPixel[],
  { ground, ink }: Pick<Tones, 'ground' | 'ink'>,
): number | undefined => {
  const [over, words] = [rgbOf(ground), rgbOf(ink)];
  for (let strength = 0; strength <= MOST_MELTED; strength += 0.04) {
    const all = pixels.every(
      ({ colour, y }) => contrastOf(mixed(colour, over, meltedAt(melt, strength, y)), words) >= AIM,
    );
    if (all) return strength;
  }
  return undefined;
};
