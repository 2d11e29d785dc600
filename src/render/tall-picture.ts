/** What every picture as tall as a phone keeps to: cards, the film's frames, and the photographs that both want. */

/** Pixels. */
export const TALL_PICTURE = { width: 1080, height: 1920 } as const;

/** Pixels at its head and its foot that the apps' own controls cover, so that no word stands there. Common practice, no source. */
export const COVERED = { top: 250, bottom: 340 } as const;

/** How many times its own pixels a photo may be enlarged before it looks soft on a phone. Common practice, no source. */
export const MOST_ENLARGED = 1.3;
