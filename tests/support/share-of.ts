/** How often the long tests try: a share of the whole each time, and the whole with `LIDLORE_WHOLE=1`. */

/** What of the whole is tried each time, so that the tests of a change take minutes. */
const SHARE = 0.1;

/** Whether all is tried. */
export const isWhole = Boolean(process.env.LIDLORE_WHOLE);

/** So many tries of `whole`, one at least. */
export const shareOf = (whole: number): number => (isWhole ? whole : Math.max(1, Math.round(whole * SHARE)));

/** One of every two cases that stand side by side, the first and the second by turns. */
export const halfOf = <Case>(cases: readonly Case[]): readonly Case[] =>
  isWhole ? cases : cases.filter((_, i) => (i + (i >> 1)) % 2 === 0);
