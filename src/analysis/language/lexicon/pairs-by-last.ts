/** A lexicon of pairs of words, written by their last word: `table coffee dining | bag sleeping` has three. */

/** Each pair with a low line between its words: "coffee_table". */
export const pairsByLast = (text: string): ReadonlySet<string> =>
  new Set(
    text.split('|').flatMap((row) => {
      const [last, ...firsts] = row.trim().split(/\s+/);
      return firsts.map((first) => `${first}_${last}`);
    }),
  );
