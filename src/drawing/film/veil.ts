/** How dark a film's picture has to become under its words, and no darker. */
import { contrastOf, mixed, type Rgb, TEXT_CONTRAST } from '../contrast.ts';

/** Steps in which a veil grows stronger. */
const STEP = 0.02;

/**
 * The weakest veil (0 to 1) under which words reach WCAG's contrast against every one of some colours; undefined where
 * none does.
 */
export const weakestVeil = (
  colours: readonly Rgb[],
  { veil, words }: { readonly veil: Rgb; readonly words: Rgb },
): number | undefined => {
  for (let strength = 0; strength <= 1; strength += STEP) {
    const reaches = colours.every(
      (colour) => contrastOf(words, mixed(colour, veil, strength)) >= TEXT_CONTRAST,
    );
    if (reaches) return strength;
  }
  return undefined;
};
