/** How far one spelling is from another. */

/** Fewest letters in which one slip is forgiven, and two: common practice, no source. */
const ONE_SLIP_FROM = 4;
const TWO_SLIPS_FROM = 8;

/** Slips that are forgiven in a word of so many letters. */
export const typosAllowed = (letters: number): number =>
  letters >= TWO_SLIPS_FROM ? 2 : letters >= ONE_SLIP_FROM ? 1 : 0;

/** Which letters a word has, a bit each (letters past the 32nd share one): tells most words apart at once. */
export const lettersOf = (word: string): number => {
  let letters = 0;
  for (let i = 0; i < word.length; i += 1) letters |= 1 << (word.charCodeAt(i) & 31);
  return letters;
};

/** Whether the second set lacks more than `most` letters of the first: then more slips lead from word to word. */
export const lacksMore = (of: number, from: number, most: number): boolean => {
  let rest = of & ~from;
  for (let i = 0; i < most && rest !== 0; i += 1) rest &= rest - 1;
  return rest !== 0;
};

export interface Distance {
  /** From the typed word to the whole other word. */
  readonly whole: number;
  /** To that beginning of the other word that is nearest: it may be still typed. */
  readonly beginning: number;
}

/**
 * Slips (a letter put in, left out, replaced, or two neighbours exchanged) from `typed` to `word`: optimal string
 * alignment (Damerau 1964; Boytsov 2011, 2.2). Gives `most + 1` for anything further than `most`.
 */
export const typosBetween = (typed: string, word: string, most: number): Distance => {
  const width = word.length + 1;
  let before: number[] = [];
  let row = Array.from({ length: width }, (_, j) => j);
  for (let i = 1; i <= typed.length; i += 1) {
    const next = [i];
    let least = i;
    for (let j = 1; j < width; j += 1) {
      const same = typed[i - 1] === word[j - 1];
      let cost = Math.min(
        (row[j - 1] as number) + (same ? 0 : 1),
        (row[j] as number) + 1,
        (next[j - 1] as number) + 1,
      );
      if (i > 1 && j > 1 && typed[i - 1] === word[j - 2] && typed[i - 2] === word[j - 1])
        cost = Math.min(cost, (before[j - 2] as number) + 1);
      next.push(cost);
      if (cost < least) least = cost;
    }
    // The next row can be no lower than one below, and an exchange looks back one row more.
    if (least > most + 1) return { whole: most + 1, beginning: most + 1 };
    before = row;
    row = next;
  }
  return {
    whole: Math.min(row[width - 1] as number, most + 1),
    beginning: Math.min(...row, most + 1),
  };
};
