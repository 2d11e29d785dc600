/** How often the long tests try: a share of the whole each time, and the whole with `LIDLORE_WHOLE=1`. */

/** What of the whole is tried each time, so that the tests of a change take minutes. */
const SHARE = 0.2;

/** So many tries of `whole`, one at least. */
export const shareOf = (whole: number): number =>
  process.env.LIDLORE_WHOLE ? whole : Math.max(1, Math.round(whole * SHARE));
