/** Contrast of words against the very pixels under them. */

/** Red, green and blue, each from 0 to 255. */
export type Rgb = readonly [number, number, number];

const linear = (value: number): number => {
  const share = value / 255;
  return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
};

/** WCAG 2.2, "relative luminance": from 0 for black to 1 for white. */
export const luminanceOf = ([r, g, b]: Rgb): number =>
  0.2126 * linear(r) + 0.7152 * linear(g) + 0.0722 * linear(b);

/** WCAG 2.2, "contrast ratio" of two luminances, from 1 to 21. */
export const ratioOf = (a: number, b: number): number => (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);

/** `#rrggbb` as three numbers. */
export const rgbOf = (hex: string): Rgb => {
  const value = Number.parseInt(hex.slice(1), 16);
  return [value >> 16, (value >> 8) & 255, value & 255];
};

/** A colour under a veil of another, `strength` from 0 to 1. */
export const veiled = (colour: Rgb, veil: Rgb, strength: number): Rgb =>
  colour.map((value, i) => value + ((veil[i] ?? 0) - value) * strength) as unknown as Rgb;

/** WCAG 2.2, 1.4.3 Contrast (Minimum): 4.5 to 1 for text. */
export const WORDS_CONTRAST = 4.5;

/** Steps in which a veil grows stronger. */
const STEP = 0.02;

/**
 * The weakest veil (0 to 1) under which words reach `WORDS_CONTRAST` against every one of some colours; undefined where
 * none does.
 */
export const weakestVeil = (
  colours: readonly Rgb[],
  { veil, words }: { readonly veil: Rgb; readonly words: Rgb },
): number | undefined => {
  const light = luminanceOf(words);
  for (let strength = 0; strength <= 1; strength += STEP) {
    const reaches = colours.every(
      (colour) => ratioOf(light, luminanceOf(veiled(colour, veil, strength))) >= WORDS_CONTRAST,
    );
    if (reaches) return strength;
  }
  return undefined;
};
