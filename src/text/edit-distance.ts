/** How far one spelling is from another. */

/** Which letters a word has, a bit each (letters past the 32nd share one): tells most words apart at once. */
export const lettersOf = (word: string): number => {
  let letters = 0;
  for (let i = 0; i < word.length; i += 1) letters |= 1 << (word.charCodeAt(i) & 31);
  return letters;
};

/** Whether the second set lacks more than `most` letters of the first: then more edits lead from word to word. */
export const lacksMore = (of: number, from: number, most: number): boolean => {
  let rest = of & ~from;
  for (let i = 0; i < most && rest !== 0; i += 1) rest &= rest - 1;
  return rest !== 0;
};

/** Edits from a word to another one, and to the nearest beginning of it. */
interface EditDistances {
  readonly whole: number;
  readonly beginning: number;
}

/**
 * Edits (a letter put in, left out, replaced, or two neighbours exchanged) from `word` to the whole of `other`, and
 * to that beginning of `other` which is nearest: optimal string alignment (Damerau 1964; Boytsov 2011, 2.2). Gives
 * `most + 1` for anything further than `most`.
 */
export const editDistances = (word: string, other: string, most: number): EditDistances => {
  const width = other.length + 1;
  let before: number[] = [];
  let row = Array.from({ length: width }, (_, j) => j);
  for (let i = 1; i <= word.length; i += 1) {
    const next = [i];
    let least = i;
    for (let j = 1; j < width; j += 1) {
      const same = word[i - 1] === other[j - 1];
      let cost = Math.min(
        (row[j - 1] as number) + (same ? 0 : 1),
        (row[j] as number) + 1,
        (next[j - 1] as number) + 1,
      );
      if (i > 1 && j > 1 && word[i - 1] === other[j - 2] && word[i - 2] === other[j - 1])
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

/** Edits from a word to another, at most `most + 1`: a difference in length alone settles most pairs. */
export const editDistance = (word: string, other: string, most = Number.POSITIVE_INFINITY): number =>
  Math.abs(word.length - other.length) > most ? most + 1 : editDistances(word, other, most).whole;
